import type { Mark } from '../drawing.ts';
import type { ViewName } from './index.ts';

/** What lies over each view, in its own mm. */
export type LaidOver = Readonly<Record<ViewName, readonly Mark[]>>;

/** Nothing. */
export const nothingOver: LaidOver = { above: [], tail: [], middle: [] };
