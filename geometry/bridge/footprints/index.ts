import { belly } from './belly.ts';
import { bellyBefore } from './belly-before.ts';
import type { Footprint } from './footprint.ts';
import { free } from './free.ts';
import { pyramid } from './pyramid.ts';
import { rectangle } from './rectangle.ts';
import { waisted } from './waisted.ts';

/** Every style of footprint, by its word in the job. A new one is a file beside this one and a line here: the schema takes its choices from these. */
export const footprints = {
  belly,
  bellyBefore,
  rectangle,
  pyramid,
  waisted,
  free,
} as const satisfies Readonly<Record<string, Footprint>>;
