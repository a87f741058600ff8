import { place } from '../../shape/transform.ts';
import { belly } from './belly.ts';
import type { Footprint } from './footprint.ts';

/** A straight rear edge and a belly before the slot: the belly bridge turned end for end. */
export const bellyBefore: Footprint = {
  name: 'belly before',
  problems: belly.problems,
  outline: (bridge) => place(belly.outline(bridge), { turn: Math.PI, dy: bridge.depth }),
};
