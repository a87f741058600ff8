import type { Job } from '../job.ts';

type Strings = Pick<Job['strings'], 'courses' | 'list'>;

/** Which course the string at this place of the list belongs to, from 0 at the bass: two neighbours to a course where the strings come in pairs, else one. */
export const courseOf = ({ courses }: Pick<Strings, 'courses'>, k: number): number =>
  courses === 'pairs' ? Math.floor(k / 2) : k;

/** How many courses the strings make. Of pairs, `solve` refuses an odd number of strings first. */
export const courseCount = ({ courses, list }: Strings): number =>
  courses === 'pairs' ? list.length / 2 : list.length;

/** Whether the string at this place of the list is the second of its pair; never, where each stands alone. */
export const isSecond = ({ courses }: Pick<Strings, 'courses'>, k: number): boolean =>
  courses === 'pairs' && k % 2 === 1;
