/** What was measured, against what, how many times as much, and how many times is wanted at most. */
export interface Row {
  readonly what: string;
  readonly measured: string;
  readonly against: string;
  readonly ratio: string;
  readonly wanted: string;
}

export const middle = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] as number;

export const times = (a: number, b: number): string => `${(a / b).toFixed(2)} ×`;
