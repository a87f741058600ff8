import type { Job } from '../../job.ts';
import type { Problem } from '../../problem.ts';
import type { Path } from '../../shape/types.ts';
import type { SayLength } from './say-length.ts';

/**
 * A style of footprint. Its outline is drawn from above in its own millimetres: x across (+ treble), y along from the front edge (0) to the
 * tail, closed, turning from +x towards +y.
 */
export interface Footprint {
  /** What it is called where it is chosen. */
  readonly name: string;
  /** What keeps these numbers from being drawn; empty when nothing does. `mm` says a length in the reader's unit. */
  readonly problems: (bridge: Job['bridge'], mm: SayLength) => readonly Problem[];
  readonly outline: (bridge: Job['bridge']) => Path;
  /** How far the front edge on the centre line lies behind the outline's foremost point, mm; 0 if not given. */
  readonly frontAtCentre?: (bridge: Job['bridge']) => number;
  /** Length and depth of an outline that is drawn by other numbers than these, mm; undefined while it cannot be drawn. */
  readonly size?: (bridge: Job['bridge']) => { readonly length: number; readonly depth: number } | undefined;
}
