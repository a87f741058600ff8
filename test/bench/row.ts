/** What was measured, against what, how many times as much, and how many times is wanted at most. */
export interface Row {
  readonly what: string;
  readonly measured: string;
  readonly against: string;
  readonly ratio: string;
  readonly wanted: string;
}
