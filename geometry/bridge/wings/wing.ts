import type { Job } from '../../job.ts';
import type { Segment } from '../../shape/types.ts';

/** What a wing has to cross: from the deck's shoulder out to the tip (or to the foot of the pyramid), mm. */
export interface Span {
  readonly width: number;
  readonly fall: number;
}

/** A style of wing: the line from the shoulder at (0, 0) to the tip at (width, fall), x outwards and y DOWN. */
export interface Wing {
  readonly style: Job['bridge']['wing'];
  readonly line: (span: Span, bridge: Job['bridge']) => readonly Segment[];
  /** Whether its arcs would overhang when the wing falls by more than it is wide. */
  readonly needsWidth: (bridge: Job['bridge']) => boolean;
}
