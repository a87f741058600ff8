import { useSyncExternalStore } from 'react';

/** The part of the window that is seen: an on-screen keyboard and a zoom leave less of it. */
const seenHeight = (): number => Math.round(window.visualViewport?.height ?? window.innerHeight);

const onSeen = (changed: () => void) => {
  const views: (EventTarget | null)[] = [window, window.visualViewport ?? null];
  for (const view of views) view?.addEventListener('resize', changed);
  return () => {
    for (const view of views) view?.removeEventListener('resize', changed);
  };
};

/** Its height, CSS px, kept up as it changes. */
export const useSeenHeight = (): number => useSyncExternalStore(onSeen, seenHeight);
