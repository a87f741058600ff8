import { type RefObject, useLayoutEffect, useState } from 'react';

/** An element's inner size, px, kept up as it changes; before it is known, a size to draw with. */
export const useRoom = (ref: RefObject<HTMLElement | null>): { readonly width: number; readonly height: number } => {
  const [room, setRoom] = useState({ width: 900, height: 560 });
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null || typeof ResizeObserver === 'undefined') return;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = element;
      if (width > 0) setRoom((now) => (now.width === width && now.height === height ? now : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return room;
};
