import type { Check } from './check.ts';
import { listed } from './say.ts';

/** How hard each string pulls. */
export const tension: Check = {
  id: 'tension',
  path: 'strings.list',
  facts: (_, { strings }) => strings.map(({ name, tension: pull }) => ({ where: name, value: pull })),
  says: (found) => `Strings pull with ${listed(found)}`,
  means: {
    low: 'So slack a string rattles and sounds thin: check its gauge, its core and its pitch.',
    high: 'So hard a pull breaks strings and lifts bridges: check its gauge, its core and its pitch.',
  },
  fixes: [['strings.list.*.gauge'], ['strings.list.*.pitch']],
};
