import type { FieldInfo } from '../../../../geometry/fields.ts';
import { gaugeRadii, isMarkedIn } from '../../../../geometry/saddle/gauges.ts';
import { type LengthUnit, MM_PER_INCH, type ShowUnits, unitFor } from '../../../../geometry/units.ts';

/** How far one press of an arrow goes: as a rule, with Shift, and with Alt. */
export type Stride = 'usual' | 'large' | 'fine';

type Strides = Readonly<Record<Stride, number>>;

const inches = (usual: number, large: number, fine: number): Strides => ({
  usual: usual * MM_PER_INCH,
  large: large * MM_PER_INCH,
  fine: fine * MM_PER_INCH,
});

const lengths: Readonly<Record<LengthUnit, Strides>> = {
  mm: { usual: 0.1, large: 1, fine: 0.01 },
  in: inches(0.005, 0.05, 0.0005),
  fraction: inches(1 / 64, 1 / 16, 0.0005),
};
/** Between radii that no gauge has, and beyond the largest gauge. */
const radii: Readonly<Record<LengthUnit, Strides>> = {
  mm: { usual: 10, large: 50, fine: 1 },
  in: inches(1, 4, 0.05),
  fraction: inches(1, 4, 1 / 64),
};
const slopes: Strides = { usual: 0.001, large: 0.01, fine: 0.0001 };
const counts: Strides = { usual: 1, large: 1, fine: 1 };
const others: Strides = { usual: 0.1, large: 1, fine: 0.01 };

const stridesOf = ({ kind }: FieldInfo, show: ShowUnits): Strides => {
  switch (kind) {
    case 'length':
    case 'gauge':
      return lengths[show[kind]];
    case 'radius':
      return radii[show.radius];
    case 'slope':
      return slopes;
    case 'count':
      return counts;
    default:
      return others;
  }
};

/** Fourteen digits, as a person's number is stored: without the last bits' noise. */
const plain = (value: number): number => Number(value.toPrecision(14));

/** The radii that gauges have in the unit chosen, mm, least first. */
export const gaugesIn = (show: ShowUnits): readonly number[] =>
  gaugeRadii
    .filter((radius) => typeof radius === 'number')
    .filter((radius) => isMarkedIn(radius, unitFor('radius', show)))
    .toSorted((a, b) => a - b);

/** From radius to radius beyond the gauges, mm. */
export const strideBeyond = (show: ShowUnits): number => radii[show.radius].usual;

/** Nearer to a step than this share of it counts as on it. */
const on = 1e-6;

/** The next radius that a gauge has; beyond the gauges the next whole stride. */
const nextRadius = (value: number, way: 1 | -1, show: ShowUnits): number => {
  const rungs = gaugesIn(show);
  const { usual } = radii[show.radius];
  const isPast = (radius: number) => (radius - value) * way > on * usual;
  const beyond = (way === 1 ? Math.floor(value / usual + on) + 1 : Math.ceil(value / usual - on) - 1) * usual;
  const rung = way === 1 ? rungs.find(isPast) : rungs.findLast(isPast);
  const largest = rungs.at(-1) ?? 0;
  if (rung === undefined) return way === 1 ? beyond : Math.max(beyond, usual);
  return way === -1 && value > largest ? Math.max(beyond, rung) : rung;
};

/** The value one press of an arrow farther, in stored units: 0.1 mm, with Shift 1 mm, with Alt 0.01 mm; in inches their like, and in fractions the next 64th; of a radius the next gauge. Not held to the field's limits. */
export const stepped = (field: FieldInfo, value: number, way: 1 | -1, stride: Stride, show: ShowUnits): number => {
  if (field.kind === 'radius' && stride === 'usual') return plain(nextRadius(value, way, show));
  const step = stridesOf(field, show)[stride];
  const isInSteps = unitFor(field.kind === 'word' || field.kind === 'text' ? 'count' : field.kind, show) === 'fraction';
  if (!isInSteps || stride === 'fine') return plain(value + way * step);
  return plain((way === 1 ? Math.floor(value / step + on) + 1 : Math.ceil(value / step - on) - 1) * step);
};

/** A dragged value on the nearest whole step of the reader's unit, in stored units; a radius on the nearest gauge's, by how much the deck falls under it. */
export const snapped = (field: FieldInfo, value: number, show: ShowUnits): number => {
  if (!Number.isFinite(value)) return value;
  const { usual } = stridesOf(field, show);
  const whole = plain(Math.round(value / usual) * usual);
  if (field.kind !== 'radius') return whole;
  const rungs = gaugesIn(show);
  const largest = rungs.at(-1) ?? 0;
  if (value > largest + usual / 2) return whole;
  // A flat arc falls by half its curvature: the gauge whose curvature is nearest lies nearest to the hand.
  return rungs.reduce((best, rung) => (Math.abs(1 / rung - 1 / value) < Math.abs(1 / best - 1 / value) ? rung : best));
};

/** The value, stopped at the field's limits; a radius without end is flat, where the field may be. */
export const stopped = ({ min, max, word }: FieldInfo, value: number): number | 'flat' =>
  value === Number.POSITIVE_INFINITY && word === 'flat' ? word : Math.max(min ?? value, Math.min(max ?? value, value));

/** The number that a step or a slider begins from where a word stands for it. */
export const startOf = ({ max }: FieldInfo, value: number): number => (Number.isFinite(value) ? value : (max ?? value));
