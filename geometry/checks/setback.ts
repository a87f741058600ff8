import type { Check } from './check.ts';
import { listed } from './say.ts';

/** The setback that each string asks for. */
export const setback: Check = {
  id: 'setback',
  path: 'strings.setbacks',
  facts: (_, { strings }) => strings.map(({ name, neededSetback }) => ({ where: name, value: neededSetback })),
  says: (found) => `Setback needed: ${listed(found)}`,
  means: {
    low: 'So little is seldom true: check what it was taken from.',
    high: 'So much is seldom true: check what it was taken from.',
  },
  fixes: [
    ['strings.list.*.cents'],
    ['strings.list.*.setback'],
    ['strings.finger'],
    ['action.bass', 'action.treble'],
    ['strings.finger', 'action.bass', 'action.treble'],
  ],
};
