import * as z from 'zod/mini';
import { usualRanges } from '../checks/ranges.ts';
import { numberOr } from './field.ts';

const bounds = {
  doubtfulFrom: 'doubtful from',
  from: 'right from',
  to: 'right to',
  doubtfulTo: 'doubtful to',
} as const;

const places = {
  doubtfulFrom: 'Below this the check says “wrong”; up to where the range begins it says “doubtful”.',
  from: 'Where the range that is right begins.',
  to: 'Where the range that is right ends.',
  doubtfulTo: 'Above this the check says “wrong”; down to where the range ends it says “doubtful”.',
} as const;

const limit = (
  title: string,
  bound: keyof typeof bounds,
  kind: (typeof usualRanges)[keyof typeof usualRanges]['kind'],
) =>
  z.optional(
    numberOr('usual', {
      label: `${title}, ${bounds[bound]}`,
      help: `${places[bound]} “usual” for the range of common practice.`,
      kind,
      min: -1000,
      max: 1000,
      preset: 'usual',
    }),
  );

type Id = keyof typeof usualRanges;

const limitsOf = (id: Id) => {
  const { title, kind } = usualRanges[id];
  return z.optional(
    z.looseObject({
      doubtfulFrom: limit(title, 'doubtfulFrom', kind),
      from: limit(title, 'from', kind),
      to: limit(title, 'to', kind),
      doubtfulTo: limit(title, 'doubtfulTo', kind),
    }),
  );
};

/** Ranges that this job's checks go by in place of the usual ones, each kept only where it was changed. */
export const limits = z.looseObject(
  Object.fromEntries((Object.keys(usualRanges) as Id[]).map((id) => [id, limitsOf(id)])) as {
    [K in Id]: ReturnType<typeof limitsOf>;
  },
);
