import { type RefObject, useLayoutEffect, useState } from 'react';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** A size to draw with where none can be measured. */
const assumed: Size = { width: 900, height: 560 };

/** An element's inner size, px, kept up as it changes; as it is known to be at first, else undefined until it is measured, which is before anything is painted. */
export const useRoom = (ref: RefObject<HTMLElement | null>, first?: Size): Size | undefined => {
  const [room, setRoom] = useState<Size | undefined>(
    first ?? (typeof ResizeObserver === 'undefined' ? assumed : undefined),
  );
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null || typeof ResizeObserver === 'undefined') return;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = element;
      if (width > 0) setRoom((now) => (now?.width === width && now.height === height ? now : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return room;
};
