import { type ReactNode, type RefObject, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { firstWords as words } from '../first-words.ts';
import type { Built } from '../store.ts';
import type { ShownPicture } from '../swift/page.ts';
import { useBenchState } from '../use-bench.ts';
import { useParts } from '../use-parts.ts';
import type { Fit, Fitted } from './fit.ts';
import { type Look, lookAt, steadyLook } from './look.ts';
import { Picture } from './Picture.tsx';

/** What lies over a drawing as it is looked at, and the element that it lies in. */
export type Over = (built: Built, shown: Fitted, box: RefObject<HTMLElement | null>) => ReactNode;

/** A drawing as it fits its room, and as it is looked at. */
export interface InSight {
  readonly fitted: Fitted;
  readonly shown: Fitted;
}

/** How a drawing is looked at, and what lies over it. */
export interface Looked {
  /** Holds what is in sight once it is drawn, for buttons elsewhere that look closer. */
  readonly inSight: RefObject<InSight | undefined>;
  readonly look: Look | undefined;
  readonly onLook: (look: Look | undefined) => void;
  readonly over?: Over | undefined;
  /** A number on the drawing begins to be typed, or is no more. */
  readonly onTyping: (isTyping: boolean) => void;
}

interface Props extends Looked {
  readonly name: string;
  readonly title: string;
  readonly says: string;
  readonly fitted: Fitted;
  readonly laying: Pick<Fit, 'say' | 'text'>;
  /** How it was fitted. */
  readonly fit: Pick<ShownPicture, 'name' | 'heights' | 'room' | 'seed'>;
  readonly focus: string | undefined;
  readonly built: Built;
  /** The frame's least height, px. */
  readonly high?: number;
  /** Whether it is the one in sight, which alone takes the focus. */
  readonly isShown?: boolean;
}

/** A drawing that can be looked at more closely. */
export const Glass = ({
  fitted,
  laying,
  fit,
  high = 0,
  look,
  onLook,
  inSight,
  over,
  isShown = true,
  ...drawing
}: Props) => {
  const box = useRef<HTMLDivElement>(null);
  const { say, text } = laying;
  // While a hand drags a number, the view that it is in stays where it is.
  const isHeld = useBenchState(({ held }) => held !== undefined);
  const [steady, setSteady] = useState<{ readonly look: Look; readonly height: number } | undefined>();
  const seen = (isHeld && steady?.look) || look;
  const exactly = isHeld ? steady?.height : undefined;
  const shown = useMemo(
    () => lookAt(fitted, seen, { say, text, high, exactly }),
    [fitted, seen, say, text, high, exactly],
  );
  const parts = useParts();
  useLayoutEffect(() => {
    const svg = box.current?.querySelector('svg.drawing') ?? null;
    parts?.tellPicture(svg, { ...fit, text, look: seen, high, exactly, scale: shown.scale });
  });
  useEffect(() => {
    if (isShown) inSight.current = { fitted, shown };
  }, [isShown, inSight, fitted, shown]);
  return (
    <div
      className="glass"
      ref={box}
      role="application"
      aria-label={words.sheet.keys(drawing.title)}
      tabIndex={isShown ? 0 : -1}
      data-scale={shown.scale}
    >
      <Picture
        {...drawing}
        fitted={shown}
        hasHands={isShown && over === undefined}
        onHold={(view) => setSteady({ look: steadyLook(shown, view), height: shown.height })}
      />
      {isShown && over?.(drawing.built, shown, box)}
      {parts && <parts.Looking {...{ box, fitted, shown, look, onLook }} />}
    </div>
  );
};
