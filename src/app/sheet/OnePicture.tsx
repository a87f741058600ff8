import { useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import { firstWords as words } from '../first-words.ts';
import { useBenchState } from '../use-bench.ts';
import { fitRoom, leastHeight, type Room } from './fit.ts';
import { Glass, type Looked } from './Glass.tsx';
import { layingOf, type PictureName, usualHeights } from './laying.ts';
import type { Shown } from './shown.ts';
import { useOthers } from './use-others.ts';
import { useSaid } from './use-said.ts';

interface Props extends Shown, Looked {
  readonly name: PictureName;
  readonly room: Room;
  /** The least height of the frame, px. */
  readonly high: number;
  /** The least height, px, in which the drawing is neither scrolled nor crowded. */
  readonly onLeast: (height: number) => void;
}

/** One picture, of the three views together or of one of them, as large as the room lets it be. */
export const OnePicture = ({ name, built, room, text, heights, focus, high, onLeast, ...looked }: Props) => {
  const others = useOthers(built);
  const seed = useRef<number>(undefined);
  const laying = useMemo(() => layingOf(name, built, heights, text, others), [name, built, heights, text, others]);
  const fitted = useMemo(() => fitRoom({ ...laying, room, seed: seed.current }), [laying, room]);
  const isHeld = useBenchState(({ held }) => held !== undefined);
  // The frame is as high for every picture, so that nothing jumps when another is chosen, and leaves the page its room however far heights are stretched.
  const least = useMemo(
    () =>
      isHeld
        ? undefined
        : leastHeight(
            name === 'three' && heights <= usualHeights
              ? laying
              : layingOf('three', built, Math.min(heights, usualHeights), text, others),
          ),
    [isHeld, name, laying, built, heights, text, others],
  );
  // Before anything is painted, as it decides how much room there is.
  useLayoutEffect(() => {
    // Nothing moves under a hand that drags a number.
    if (least !== undefined) onLeast(least);
  }, [least, onLeast]);
  useEffect(() => {
    seed.current = fitted.scale;
  }, [fitted]);
  const all = useSaid(built);
  const says = name === 'three' ? Object.values(all).join(' ') : all[name];
  const title = name === 'three' ? words.sheet.drawing : words.sheet[name];
  // The next one is fitted from this scale.
  const fit = { name, heights, room, seed: fitted.scale };
  return <Glass {...looked} {...{ name, title, says, fitted, laying, fit, focus, built }} high={high} />;
};
