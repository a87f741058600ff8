import { useSyncExternalStore } from 'react';
import { seenHeight } from './room.ts';

/** What it was when last told of: to ask the window itself makes it lay out the page, which each rendering would then do. */
let known: number | undefined;

const onSeen = (changed: () => void) => {
  const tell = () => {
    known = seenHeight();
    changed();
  };
  known = seenHeight();
  const views: (EventTarget | null)[] = [window, window.visualViewport ?? null];
  for (const view of views) view?.addEventListener('resize', tell);
  return () => {
    for (const view of views) view?.removeEventListener('resize', tell);
    known = undefined;
  };
};

const lastSeen = (): number => {
  known ??= seenHeight();
  return known;
};

/** Its height, CSS px, kept up as it changes. */
export const useSeenHeight = (): number => useSyncExternalStore(onSeen, lastSeen, lastSeen);
