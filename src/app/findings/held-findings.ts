import type { Finding } from '../../../geometry/checks/check.ts';
import type { CheckId } from '../../../geometry/checks/ranges.ts';

/** Those of the checks that are not right, and want a way out. */
export const openOf = (findings: readonly Finding[]): readonly CheckId[] =>
  findings.flatMap(({ check, level }) => (level === 'right' ? [] : check));

/** What is found while a hand drags a number, and where it stands meanwhile: nothing else moves under the eye when a check comes to another level. */
export interface HeldFindings {
  readonly findings: readonly Finding[];
  /** The order that they stay in. */
  readonly order: readonly CheckId[];
  /** Those that stay among the ones that are not right: they were not where the hand began, or where it has been since. */
  readonly open: ReadonlySet<CheckId>;
}

/** What is found where the hand is now, after what it began with and what was found on its way. */
export const heldFindings = (
  before: HeldFindings | undefined,
  began: readonly Finding[],
  findings: readonly Finding[],
): HeldFindings => {
  const { order, open } = before ?? { order: began.map(({ check }) => check), open: new Set(openOf(began)) };
  const all = openOf(findings);
  return { findings, order, open: all.every((check) => open.has(check)) ? open : new Set([...open, ...all]) };
};

/** Findings in an order that names most of them; the others come last. */
export const inOrder = (findings: readonly Finding[], order: readonly CheckId[]): readonly Finding[] => {
  const place = ({ check }: Finding) => (order.includes(check) ? order.indexOf(check) : order.length);
  return findings.toSorted((a, b) => place(a) - place(b));
};
