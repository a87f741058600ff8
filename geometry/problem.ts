/** Why something is refused or cannot be built: where, what stands there, and in words what is allowed and the way out. */
export interface Problem {
  /** The job's path, e.g. `bridge.topRadius` or `strings.list.E2.gauge`; empty for the file as a whole. */
  readonly path: string;
  /** The value as it was found; for a person, cut short. */
  readonly value: unknown;
  /** One or two plain sentences that name the value, the limit and the way out. Lengths in mm. */
  readonly says: string;
}

/** What one look at a job finds: a problem, or nothing. */
export type Found = Problem | undefined | false;

/** The problems among what several looks found. */
export const found = (...candidates: readonly Found[]): readonly Problem[] =>
  candidates.filter((c): c is Problem => !!c);
