import { leastRadius, type Rest, restOf } from '../../../../geometry/gauge/rest.ts';
import { type Surface, type SurfaceName, surfaceOf } from '../../../../geometry/gauge/surfaces.ts';
import { markedIn } from '../../../../geometry/saddle/gauges.ts';
import { formatQuantity, MM_PER_INCH, parseQuantity, type ShowUnits, unitFor } from '../../../../geometry/units.ts';
import type { Built } from '../../store.ts';
import { words } from '../../words.ts';

/** What gauge is laid on what, as it is typed. */
export interface GaugeChosen {
  readonly on: SurfaceName;
  readonly text: string;
}

/** What is marked on a gauge, in the unit that is marked there; which is also how it is typed. */
export const gaugeMark = (radius: number | 'flat', show: ShowUnits): string =>
  radius === 'flat' ? 'flat' : formatQuantity(radius, 'radius', { ...show, radius: markedIn(radius) }, { unit: true });

/** What is laid at first: the nearest gauge on the crown. */
export const gaugeFor = ({ job, design }: Built): GaugeChosen => ({
  on: 'crown',
  text: gaugeMark(design.nearestGauge.radius, job.show),
});

export type GaugeLaid =
  | { readonly ok: true; readonly surface: Surface; readonly radius: number | 'flat'; readonly rest: Rest }
  | { readonly ok: false; readonly says: string };

/** A gauge laid on a surface of a design, or why it cannot be, in the reader's unit. */
export const layGauge = ({ on, text }: GaugeChosen, { job, design }: Built): GaugeLaid => {
  const say = (radius: number) => formatQuantity(radius, 'radius', job.show, { unit: true });
  const read = parseQuantity(text, 'radius', unitFor('radius', job.show), {
    word: 'flat',
    decimal: job.show.decimal,
  });
  if (!read.ok) return read;
  const radius = typeof read.value === 'number' ? read.value : 'flat';
  if (radius !== 'flat' && radius <= 0) return { ok: false, says: words.measuring.notAbove(say(radius)) };
  const surface = surfaceOf(on, job, design);
  const rest = restOf(surface.line, radius);
  if (rest === undefined) {
    // The least is said rounded up, so that it is enough as it is said.
    const step = unitFor('radius', job.show) === 'mm' ? 1 : MM_PER_INCH / 4;
    const least = Math.ceil(leastRadius(surface.line) / step) * step;
    return { ok: false, says: words.measuring.tooTight(say(radius as number), say(least)) };
  }
  return { ok: true, surface, radius, rest };
};
