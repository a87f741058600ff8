import type { Design } from '../../geometry/design.ts';
import { type PassAdvice, setUp } from '../../geometry/saddle/setup.ts';
import type { Settled } from '../../geometry/settle.ts';

/** What the last reading of the strung guitar asks for; undefined where none was taken, or where the last one lacks an outer string. */
export const lastPass = (job: Settled, design: Design): PassAdvice | undefined => {
  const last = setUp(job, design).at(-1);
  return last?.ok === true ? last.advice : undefined;
};
