import type { Job } from '../job.ts';
import { translate } from '../shape/transform.ts';
import type { Path } from '../shape/types.ts';
import { footprints } from './footprints/index.ts';

/** The bridge's outline in place on the guitar, from above: x across (+ treble), y the distance from the nut, mm; closed. */
export const footprintOutline = (job: Job, design: { readonly bridgeFront: number }): Path =>
  translate(footprints[job.bridge.footprint].outline(job.bridge), 0, design.bridgeFront);
