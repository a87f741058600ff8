import { meetings } from '../bridge/existing.ts';
import { inRow } from '../enumerate.ts';
import type { Check, Fact } from './check.ts';
import { levelAt } from './level.ts';
import { unsigned } from './say.ts';

const mostNamed = 3;

const across = ', across';
const along = ', along';

/** On which side of its hole a pin lies: “1.2 mm to the bass of E2’s”. */
const aside = ({ where = '', value }: Fact, say: (value: number) => string): string => {
  const isAcross = where.endsWith(across);
  const string = where.slice(0, -(isAcross ? across : along).length);
  const way = isAcross ? (value < 0 ? 'to the bass of' : 'to the treble of') : value < 0 ? 'before' : 'behind';
  return `${unsigned(say(value))} ${way} ${string}’s`;
};

/** How far the new pin nearest to each kept pin hole misses it: across, + towards the treble, and along the guitar, + towards the tail. Looked at apart, as each is mended by itself. */
export const pinsMeetHoles: Check = {
  id: 'pinsMeetHoles',
  path: 'pins.spread',
  facts: (job, design) =>
    meetings(job, design).flatMap(({ hole, string: { name, pin } }) => [
      { where: `${name}${across}`, value: pin.x - hole.across },
      { where: `${name}${along}`, value: pin.y - hole.fromNut },
    ]),
  says: ({ worst, level, facts, range, say }) => {
    if (level === 'right') return `New pins meet the kept holes within ${unsigned(say(worst.value))} each way`;
    const out = facts.filter(({ value }) => levelAt(range, value) !== 'right');
    const named = out.slice(0, mostNamed).map((fact) => aside(fact, say));
    const more = out.length > mostNamed ? ', and others too' : '';
    return `New pins lie beside the kept holes: ${inRow(named)}${more}`;
  },
  means: {
    low: 'The reamer would cut through the hole’s side: meet the holes, or plug them.',
    high: 'The reamer would cut through the hole’s side: meet the holes, or plug them.',
  },
  fixes: [
    ['pins.fromSaddle'],
    ['pins.spread'],
    ['pins.spread', 'pins.fromSaddle'],
    ['pins.fromSaddle', 'bridge.depth'],
    ['pins.spread', 'pins.fromSaddle', 'bridge.depth'],
    ['pins.arcRise'],
    ['pins.spread', 'pins.fromSaddle', 'pins.arcRise'],
  ],
};
