import type { Design } from '../../geometry/design.ts';
import type { Drawing } from '../../geometry/drawing.ts';
import type { Settled } from '../../geometry/settle.ts';

/** One template at true size. Its drawing stands in its own millimetres, x right and y down the paper. */
export interface Piece {
  /** Also its file's name. */
  readonly id: string;
  readonly title: string;
  /** Which face of the work lies up when the paper is laid on it. */
  readonly faceUp: string;
  /** What it is for at the bench, in one sentence. */
  readonly use: string;
  /** Whether this job has such a piece; every job has it where this is left out. */
  readonly applies?: (job: Settled) => boolean;
  /** Only asked of a job that has this piece. */
  readonly draw: (job: Settled, design: Design) => Drawing;
}
