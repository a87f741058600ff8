import type { Job } from '../../job.ts';
import { belly } from './belly.ts';
import type { Footprint } from './footprint.ts';
import { rectangle } from './rectangle.ts';

/** Every style of footprint, by its name in the job. A new one is a file beside this one and a line here. */
export const footprints: Readonly<Record<Job['bridge']['footprint'], Footprint>> = { belly, rectangle };
