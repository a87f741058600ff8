import { wallLength } from '../../bridge/slot.ts';
import type { Design } from '../../design.ts';
import type { Settled } from '../../settle.ts';

/** What is left on each side of what can just be built, mm. */
const least = 0.05;

/**
 * How much room there is before a bridge could no longer be built, mm, one number a reason; all are 0 or more where it can. They lead advice away from what the solver would refuse: whether a job can be built it
 * says itself.
 */
export const roomOf = ({ bridge, slot, strings }: Settled, design: Design): readonly number[] => {
  const { shoulderBass, shoulderTreble, tipTop } = design.profile;
  const isBelly = bridge.footprint === 'belly';
  const most = Number.MAX_SAFE_INTEGER;
  return [
    design.woodUnderSlot,
    Math.min(shoulderBass, shoulderTreble) - tipTop,
    wallLength(slot) - strings.spread,
    bridge.deckWidth - slot.length + least,
    bridge.length - bridge.deckWidth + least,
    isBelly ? bridge.length - bridge.bellyWidth + least : most,
    isBelly ? bridge.depth - bridge.wingDepth : most,
    isBelly ? bridge.bellyWidth / 2 - (bridge.depth - bridge.wingDepth) : most,
    ...design.strings.flatMap(({ exposure, leaves, breakX }) => [exposure, leaves.x - breakX]),
  ].map((room) => room - least);
};
