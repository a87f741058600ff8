import { coverBetween, type Edge, scarOutline } from '../bridge/cover.ts';
import { footprintOutline } from '../bridge/outline.ts';
import { inRow } from '../enumerate.ts';
import type { Check, Fact } from './check.ts';
import { levelAt } from './level.ts';
import { unsigned } from './say.ts';

const named: Readonly<Record<Edge, string>> = { front: 'the front edge', rear: 'the rear edge', tips: 'the tips' };

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
    const list = (all: readonly Fact[]) => inRow(all.map(({ value, where }) => `${unsigned(say(value))} at ${where}`));
    return [
      ...(bare.length > 0 ? [`Bare scar shows, ${list(bare)}`] : []),
      ...(tight.length > 0 ? [`the old scar is covered by only ${list(tight)}`] : []),
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
