import { coverBetween, type Edge, scarOutline } from '../bridge/cover.ts';
import { footprintOutline } from '../bridge/outline.ts';
import { inRow } from '../enumerate.ts';
import type { Check, Fact } from './check.ts';
import { levelAt } from './level.ts';
import { unsigned } from './say.ts';

const named: Readonly<Record<Edge, string>> = {
  front: 'the front edge',
  rear: 'the rear edge',
  bassTip: 'the bass tip',
  trebleTip: 'the treble tip',
};

/** Numbers with their places; both tips at once where they say the same. */
const listed = (facts: readonly Fact[], say: (value: number) => string): string => {
  const said = facts.map(({ value, where }) => ({ where, number: unsigned(say(value)) }));
  const [one, other] = said.filter(({ where }) => where === named.bassTip || where === named.trebleTip);
  const isBoth = one?.number === other?.number;
  return inRow(
    said
      .filter((fact) => !isBoth || fact !== other)
      .map((fact) => `${fact.number} at ${isBoth && fact === one ? 'each tip' : fact.where}`),
  );
};

/** How far the new footprint covers the scar that the old bridge left on the top. */
export const scar: Check = {
  id: 'scar',
  path: 'bridge.footprint',
  facts: (job, design) => {
    const old = scarOutline(job);
    if (old === undefined) return [];
    return coverBetween(footprintOutline(job, design), old, design.datum.x).map(({ edge, least }) => ({
      where: named[edge],
      value: least,
    }));
  },
  says: ({ worst, level, facts, range, say }) => {
    if (level === 'right') return `The footprint covers the old scar by ${say(worst.value)} or more`;
    const shown = facts.filter(({ value }) => levelAt(range, value) !== 'right');
    const [bare, tight] = [shown.filter(({ value }) => value < 0), shown.filter(({ value }) => value >= 0)];
    return [
      ...(bare.length > 0 ? [`Bare scar shows, ${listed(bare, say)}`] : []),
      ...(tight.length > 0 ? [`the old scar is covered by only ${listed(tight, say)}`] : []),
    ]
      .join('; ')
      .replace(/^t/, 'T');
  },
  means: { low: 'Bare wood or torn finish will show around the new bridge.' },
  fixes: [
    ['bridge.frontToSaddle'],
    ['bridge.length'],
    ['bridge.depth'],
    ['bridge.wingDepth'],
    ['bridge.bellyWidth'],
    ['bridge.frontToSaddle', 'bridge.depth'],
    ['bridge.frontToSaddle', 'bridge.length'],
    ['bridge.length', 'bridge.depth'],
    ['bridge.depth', 'bridge.wingDepth'],
    ['bridge.frontToSaddle', 'bridge.length', 'bridge.depth'],
    ['bridge.frontToSaddle', 'bridge.depth', 'bridge.wingDepth'],
    ['bridge.frontToSaddle', 'bridge.length', 'bridge.depth', 'bridge.wingDepth'],
    ['bridge.frontToSaddle', 'bridge.length', 'bridge.depth', 'bridge.wingDepth', 'bridge.bellyWidth'],
  ],
};
