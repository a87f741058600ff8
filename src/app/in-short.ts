import type { Problem } from '../../geometry/problem.ts';

/** The first sentence of what is said of a problem: what is in the way, without the ways out. */
export const inShort = ({ says }: Problem): string => says.split(/(?<=[.:]) (?=\p{Lu})/u, 1)[0] ?? says;
