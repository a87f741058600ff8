import { useCallback, useMemo, useState, useSyncExternalStore } from 'react';
import { screenKey } from '../../stored-keys.ts';
import { readScreen, type Screen } from './screen.ts';

const ratioNow = (): number => window.devicePixelRatio || 1;

/** The ratio of the device's pixels to CSS px, kept up as the browser's zoom or the screen changes. */
const useRatio = (): number =>
  useSyncExternalStore(
    (changed) => {
      window.addEventListener('resize', changed);
      // Another screen may have another ratio without another size.
      const list = window.matchMedia?.(`(resolution: ${ratioNow()}dppx)`);
      list?.addEventListener('change', changed);
      return () => {
        window.removeEventListener('resize', changed);
        list?.removeEventListener('change', changed);
      };
    },
    ratioNow,
    ratioNow,
  );

const stored = (): string | null => {
  try {
    return window.localStorage.getItem(screenKey);
  } catch {
    return null;
  }
};

/** How large a px is on this screen, once it was measured and as long as that holds; and what takes a measurement. */
export const useScreen = (): readonly [Screen | undefined, (pxPerMm: number) => void] => {
  const ratio = useRatio();
  const [text, setText] = useState(stored);
  const screen = useMemo(() => readScreen(text, ratio), [text, ratio]);
  const measure = useCallback((pxPerMm: number) => {
    const now = JSON.stringify({ pxPerMm, ratio: ratioNow() } satisfies Screen);
    setText(now);
    try {
      window.localStorage.setItem(screenKey, now);
    } catch {
      // It holds till the page is left.
    }
  }, []);
  return [screen, measure];
};
