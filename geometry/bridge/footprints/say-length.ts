import { formatQuantity, parseQuantity, type ShowUnits, unitFor } from '../../units.ts';

/** Says a length (mm). A limit is rounded towards the side on which it holds: what is said, typed as it stands, will do. */
export type SayLength = (length: number, towards?: 'up' | 'down') => string;

/** Nearer than this (mm) to a limit is at it. */
const atLimit = 1e-9;

/** Says lengths in the reader's unit; limits in decimals of it, where the usual rounding would overstep them. */
export const sayLength =
  (show: ShowUnits): SayLength =>
  (length, towards) => {
    const usual = formatQuantity(length, 'length', show, { unit: true });
    if (towards === undefined) return usual;
    const sense = towards === 'up' ? 1 : -1;
    const holds = (text: string): boolean => {
      const read = parseQuantity(text, 'length', unitFor('length', show));
      return read.ok && typeof read.value === 'number' && sense * (read.value - length) >= -atLimit;
    };
    if (holds(usual)) return usual;
    const [step, digits] = show.length === 'mm' ? [0.1, 1] : [0.0254, 3];
    const whole = towards === 'up' ? Math.ceil(length / step) : Math.floor(length / step);
    return formatQuantity(whole * step, 'length', show, { unit: true, digits });
  };
