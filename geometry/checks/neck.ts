import { neckOrBridge } from '../instrument/neck.ts';
import { formatQuantity } from '../units.ts';
import type { Check, Found } from './check.ts';
import { sideOf } from './level.ts';

/** What the neck asks for in place of a bridge: how far it turns, and what comes off the heel. */
const reset = ({ job, worst, range }: Found): string => {
  const { reset, says } = neckOrBridge(job);
  const low = sideOf(range, worst.value) === 'low';
  const instead =
    says === 'reset' ? 'a neck reset rather than a bridge' : `a ${low ? 'thin' : 'thick'} bridge, or a neck reset`;
  const off = formatQuantity(Math.abs(reset.offHeel), 'length', job.show, { unit: true });
  const angle = formatQuantity(Math.abs(reset.angle), 'angle', job.show, { unit: true });
  return `: ${instead}, by ${angle}, ${off} off ${reset.offHeel >= 0 ? 'the heel' : 'the joint’s upper edge'}`;
};

/** Neck or bridge: the thickness at the centre that would suit the neck as it is, the middle of those that leave the usual straightedge clearance. */
export const neck: Check = {
  id: 'neck',
  path: 'guitar.neckPlaneHeight',
  facts: (job) => {
    const { suits } = neckOrBridge(job);
    return [{ value: (suits.from + suits.to) / 2 }];
  },
  says: (found) =>
    found.worst.value > 0
      ? `A bridge about ${found.say(found.worst.value)} thick would suit the neck${found.level === 'right' ? '' : reset(found)}`
      : `No bridge is thin enough for the neck${reset(found)}`,
  means: {
    low: 'The neck angle is too low for a usual bridge.',
    high: 'The neck stands so far back that a usual bridge is too thin for it.',
  },
  // To the middle of what is usual: nobody resets a neck to the edge of it.
  aim: { from: 8.7, to: 8.8 },
  fixes: [['guitar.neckPlaneHeight']],
};
