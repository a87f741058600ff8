import type { Job } from '../../job.ts';
import { hollow } from './hollow.ts';
import { ogee } from './ogee.ts';
import { round } from './round.ts';
import { straight } from './straight.ts';
import type { Wing } from './wing.ts';

/** Every style of wing, by its name in the job. A new one is a file beside this one and a line here. */
export const wings: Readonly<Record<Job['bridge']['wing'], Wing>> = { hollow, straight, round, ogee };
