import type { Figure, Input } from '../../../geometry/figures/figure.ts';
import { formatQuantity, type QuantityKind, type ShowUnits } from '../../../geometry/units.ts';
import type { Built } from '../store.ts';

/** Lengths of a row read as one with as many decimals each: hundredths of a mm, thousandths of an inch. */
const digitsFor = (kind: QuantityKind, show: ShowUnits) =>
  kind === 'length' ? { digits: show.length === 'mm' ? 2 : 3 } : {};

/** A figure's value with its unit, as people read it. */
export const figureText = (figure: Figure, { job, design }: Built, k = 0): string => {
  const value = figure.value(job, design, k);
  return value === undefined
    ? '–'
    : formatQuantity(value, figure.kind, job.show, { unit: true, ...digitsFor(figure.kind, job.show) });
};

/** The same without its unit, for a table whose head says it. */
export const bareText = (figure: Figure, { job, design }: Built, k: number): string => {
  const value = figure.value(job, design, k);
  return value === undefined ? '–' : formatQuantity(value, figure.kind, job.show, digitsFor(figure.kind, job.show));
};

/** An input with enough digits to follow the sum by hand: four decimals more than a rule reads. */
export const inputText = ({ value, kind }: Input, show: ShowUnits): string => {
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
