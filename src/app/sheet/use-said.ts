import { useMemo } from 'react';
import type { Built } from '../state.ts';
import { sayViews } from './says.ts';
import { useWhileHeld } from './use-still.ts';

/** What each view shows, in words; those of a number that a hand drags once it lets go, as nobody reads on the way. */
export const useSaid = (built: Built) => {
  const still = useWhileHeld(built);
  return useMemo(() => sayViews(still), [still]);
};
