import type { Design } from '../design.ts';
import { boardRadius } from '../instrument/board.ts';
import { sayFor } from '../say.ts';
import type { Settled } from '../settle.ts';
import type { Check } from './check.ts';

/** The crown's radius and the board's, carried on to the saddle; undefined where either is flat. */
const radii = (job: Settled, design: Design): { readonly crown: number; readonly board: number } | undefined => {
  const { radius: crown } = design.cut ?? design.crown;
  const board = boardRadius(job.guitar, design.saddleLine.x);
  return crown === 'flat' || board === 'flat' ? undefined : { crown, board };
};

/** The crown's radius as a share of the board's radius carried on to the saddle. */
export const crownRadius: Check = {
  id: 'crownRadius',
  path: 'guitar.boardRadiusEnd',
  facts: (job, design) => {
    const both = radii(job, design);
    return both === undefined ? [] : [{ value: both.crown / both.board }];
  },
  says: ({ worst, say, job, design }) => {
    const both = radii(job, design);
    const { radius } = sayFor(job);
    return `Crown radius ${say(worst.value)} of the board’s${both ? `: ${radius(both.crown)} against ${radius(both.board)} at the saddle` : ''}`;
  },
  means: {
    low: 'The middle strings stand high over the board: check its radius at both ends.',
    high: 'The middle strings stand low over the board: check its radius at both ends.',
  },
  fixes: [['guitar.boardRadiusEnd'], ['guitar.boardRadiusNut'], ['guitar.boardRadiusNut', 'guitar.boardRadiusEnd']],
};
