import type { Built } from '../store.ts';

/** What every form of the drawing is given. */
export interface Shown {
  readonly built: Built;
  /** Text height, px. */
  readonly text: number;
  /** How many times as large heights are drawn. */
  readonly heights: number;
  /** The path of the field in focus: what shows it is lit. */
  readonly focus: string | undefined;
}
