import type { Check } from './check.ts';
import { listed } from './say.ts';

/** The wanted clearance over fret 1, at both sides. */
export const firstFret: Check = {
  id: 'firstFret',
  path: 'action.firstFretBass',
  facts: ({ action }) => [
    { where: 'the bass side', value: action.firstFretBass },
    { where: 'the treble side', value: action.firstFretTreble },
  ],
  says: (found) => `Wanted first-fret clearance ${listed(found)}`,
  means: {
    low: 'The open string may buzz on the first fret.',
    high: 'The first frets are hard to press, and their notes sharp.',
  },
  fixes: [
    ['action.firstFretBass'],
    ['action.firstFretTreble'],
    ['action.firstFretBass', 'action.firstFretTreble'],
    ['action.firstFretBass', 'action.firstFretTreble', 'bridge.thickness'],
  ],
};
