import type { Job } from '../job.ts';
import { formatQuantity, parseQuantity, type QuantityKind, unitFor } from '../units.ts';

/** By how much a number that is shown is moved until, read back, it keeps its limit, mm. */
const step = 0.005;
/** How often at most: farther than any unit's rounding. */
const most = 40;

const shown = ({ show }: Job, kind: QuantityKind, value: number, way: 1 | -1): string => {
  for (let k = 0; k < most; k += 1) {
    const text = formatQuantity(value + way * k * step, kind, show, { unit: true });
    const read = parseQuantity(text, kind, unitFor(kind, show));
    if (read.ok && typeof read.value === 'number' && way * (read.value - value) >= 0) return text;
  }
  throw new RangeError(`No number that is shown lies near ${value}.`);
};

/** A length or radius (mm) in the reader's unit, rounded up, so that whoever types it as it stands has at least so much. */
export const atLeast = (job: Job, kind: 'length' | 'radius', value: number): string => shown(job, kind, value, 1);

/** The same rounded down: at most so much. */
export const atMost = (job: Job, kind: 'length' | 'radius', value: number): string => shown(job, kind, value, -1);
