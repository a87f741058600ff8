import { unsigned } from '../../../geometry/checks/say.ts';
import type { Figure, Input } from '../../../geometry/figures/figure.ts';
import { shortName } from '../../../geometry/names.ts';
import { gaugeRadii } from '../../../geometry/saddle/gauges.ts';
import { formatQuantity, type QuantityKind, type ShowUnits } from '../../../geometry/units.ts';
import { gaugeText } from '../outcome/gauge-text.ts';
import type { Built } from '../state.ts';
import { words } from '../words.ts';

/** Lengths of a row read as one with as many decimals each: hundredths of a mm, thousandths of an inch. */
const digitsFor = (kind: QuantityKind, show: ShowUnits) =>
  kind === 'length' ? { digits: show.length === 'mm' ? 2 : 3 } : {};

/** A value with its unit, as people read it. */
export const valueText = (value: number | 'flat', kind: QuantityKind, show: ShowUnits): string =>
  formatQuantity(value, kind, show, { unit: true, ...digitsFor(kind, show) });

/** Figures that may be the radius of a gauge. */
const ofGauges: readonly string[] = ['nearestGauge', 'crownRadius'];

/** A gauge by the name that is marked on it; undefined for a radius that none has, or that was typed or reckoned as something else. */
const gaugeAt = (
  value: Input['value'],
  { kind, path, figure }: Pick<Input, 'kind' | 'path' | 'figure'>,
  show: ShowUnits,
): string | undefined => {
  const isOfGauges = path === undefined && (figure === undefined || ofGauges.includes(figure));
  return kind === 'radius' && isOfGauges && gaugeRadii.includes(value) ? gaugeText(value, show) : undefined;
};

/** A figure's value with its unit, as people read it. */
export const figureText = (figure: Figure, { job, design }: Built, k = 0): string => {
  const value = figure.value(job, design, k);
  if (value === undefined) return '–';
  const { id, kind } = figure;
  return gaugeAt(value, { kind, figure: id }, job.show) ?? valueText(value, kind, job.show);
};

/** The same without its unit, for a table whose head says it. */
export const bareText = (figure: Figure, { job, design }: Built, k: number): string => {
  const value = figure.value(job, design, k);
  return value === undefined ? '–' : formatQuantity(value, figure.kind, job.show, digitsFor(figure.kind, job.show));
};

/** How a figure's value is shown: with its unit; without it, where a table's head says it; or so, and where it is less than nothing, by how much its limit is passed. */
export type Form = 'whole' | 'bare' | 'life';

/** A figure's value as it is seen, and what is read out of the button that it can be asked by. */
export const figureSays = (
  figure: Figure,
  built: Built,
  k: number,
  form: Form,
): { readonly seen: string; readonly label: string } => {
  const whole = figureText(figure, built, k);
  const value = figure.value(built.job, built.design, k);
  const isPast = form === 'life' && typeof value === 'number' && value < 0;
  const { pastBy } = words.outcome;
  const seen = form === 'whole' ? whole : bareText(figure, built, k);
  const of = figure.per === 'string' ? shortName(built.job.strings.list[k]?.name ?? '') : '';
  return {
    seen: isPast ? pastBy(unsigned(seen)) : seen,
    label: words.figures.ask(figure.title, of, isPast ? pastBy(unsigned(whole)) : whole),
  };
};

/** An input with enough digits to follow the sum by hand: four decimals more than a rule reads; a gauge by its mark. */
export const inputText = (input: Input, show: ShowUnits): string => {
  const { value, kind } = input;
  const gauge = gaugeAt(value, input, show);
  if (gauge !== undefined) return gauge;
  const digits: Partial<Record<QuantityKind, number>> = {
    length: show.length === 'mm' ? 4 : 5,
    radius: show.radius === 'mm' ? 2 : 3,
    gauge: show.gauge === 'mm' ? 4 : 5,
    angle: 4,
    force: 3,
    frequency: 3,
    slope: 4,
  };
  const exact = digits[kind];
  return formatQuantity(value, kind, show, {
    unit: true,
    ...(exact !== undefined && value !== 'flat' && { digits: exact }),
  });
};
