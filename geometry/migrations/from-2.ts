type Bag = Readonly<Record<string, unknown>>;

/** A job of version 2 as one of version 3, meaning the same: a job had one design only. */
export const fromVersion2 = (job: Bag): Bag => ({
  ...job,
  version: 3,
  alternatives: { present: 'first design', list: [] },
});
