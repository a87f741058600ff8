import { rangeOf, roundRange } from '../../../geometry/checks/ranges.ts';
import { fieldAt } from '../../../geometry/fields.ts';
import { type NeckOrBridge, neckOrBridge } from '../../../geometry/instrument/neck.ts';
import { missingReadings } from '../../../geometry/instrument/strung.ts';
import { type Job, notTaken } from '../../../geometry/job.ts';
import { once } from '../../../geometry/once.ts';
import { type Settled, settle } from '../../../geometry/settle.ts';
import { formatQuantity } from '../../../geometry/units.ts';
import { words } from '../words.ts';

const says = words.outcome;

/** What the neck asks for, and in a sentence. */
export interface NeckSays {
  readonly neck: NeckOrBridge;
  readonly says: string;
}

/** Thicknesses that suit the neck, as far as they are usual, or else doubtful: “9.0 to 10.0 mm”. */
const thicknesses = (job: Settled, { suits, says: verdict }: NeckOrBridge): string => {
  const { range, own } = rangeOf(job, 'neck');
  const usual = job.show.length === 'mm' ? range : { ...roundRange(range, { ...job.show, length: 'in' }), ...own };
  const { from = suits.from, to = suits.to, doubtfulFrom = from, doubtfulTo = to } = usual;
  const [thin, stout] = verdict === 'bridge' ? [from, to] : [doubtfulFrom, doubtfulTo];
  const say = (value: number, unit: boolean) =>
    formatQuantity(value, 'length', job.show, { unit, ...(job.show.length !== 'mm' && { digits: 3 }) });
  const [low, high] = [Math.max(suits.from, thin), Math.min(suits.to, stout)];
  return say(low, false) === say(high, false) ? say(high, true) : says.thicknesses(say(low, false), say(high, true));
};

/** Neck or bridge: it hangs on the readings alone, whether or not a bridge can be built. Undefined while they do not settle. */
export const neckOf = once((job: Job): NeckSays | undefined => {
  const settling = settle(job);
  if (!settling.ok) return undefined;
  const neck = neckOrBridge(settling.job);
  return { neck, says: says.neckSays[neck.says](thicknesses(settling.job, neck)) };
});

/** The readings of the strung guitar that are missing where they were begun, by their fields' names; a straightedge over the old bridge is complete by itself. */
export const unread = ({ strung }: Job): readonly string[] => {
  const isTaken = (key: string) => strung[key as keyof Job['strung']] !== notTaken;
  const { thickness, light, ...others } = strung;
  const isBegun = Object.keys(others).some(isTaken) || isTaken('thickness') !== isTaken('light');
  return isBegun ? missingReadings(strung).map((key) => fieldAt(`strung.${key}`)?.label ?? key) : [];
};
