import type { Check } from './check.ts';

type OneNumber = Omit<Check, 'facts' | 'says' | 'fixes'> & {
  readonly value: (...of: Parameters<Check['facts']>) => number | string;
  /** The sentence around the number. */
  readonly says: (number: string) => string;
  readonly fixes?: Check['fixes'];
};

/** A check of one number of the job or its design, mended at its own field unless others are given; it does not apply where a word stands in the number's place. */
export const oneNumber = ({ value, says, ...check }: OneNumber): Check => ({
  fixes: [[check.path]],
  ...check,
  facts: (job, design) => {
    const found = value(job, design);
    return typeof found === 'number' ? [{ value: found }] : [];
  },
  says: ({ worst, say }) => says(say(worst.value)),
});
