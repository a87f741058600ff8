import { it } from 'vitest';
import { count, holdJobs, timeout } from './hold-jobs.ts';

it(`the whole job space: ${count} random jobs, the second half`, { timeout }, () => holdJobs(20262));
