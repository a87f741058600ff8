import { useMemo, useSyncExternalStore } from 'react';

/** Whether the window answers to a media query; false where none can be asked. */
export const useMedia = (query: string): boolean => {
  // The same list for as long as the query is: it would else be listened to anew at each rendering.
  const { onChange, matches } = useMemo(() => {
    const list = typeof window.matchMedia === 'function' ? window.matchMedia(query) : undefined;
    return {
      onChange: (changed: () => void) => {
        list?.addEventListener('change', changed);
        return () => list?.removeEventListener('change', changed);
      },
      matches: () => list?.matches ?? false,
    };
  }, [query]);
  return useSyncExternalStore(onChange, matches, matches);
};
