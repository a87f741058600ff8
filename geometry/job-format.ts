/** What a job file says of itself: that it is one, and how its keys are to be read. */
export const jobFormat = 'sagitta-job';
export const jobVersion = 3;
