import { useEffect, useMemo, useRef, useState } from 'react';
import type { ViewName } from '../../../geometry/views/index.ts';
import { litBy } from '../../../geometry/views/lit.ts';
import { firstWords as words } from '../first-words.ts';
import type { Built } from '../store.ts';
import { useParts } from '../use-parts.ts';
import type { Fitted } from './fit.ts';
import { MovingPrimitives } from './MovingPrimitives.tsx';

interface PictureProps {
  readonly name: string;
  readonly fitted: Fitted;
  readonly title: string;
  readonly says: string;
  readonly focus: string | undefined;
  readonly built: Built;
  /** Whether numbers can be typed and dragged on it. */
  readonly hasHands: boolean;
  /** A number is taken hold of in this view. */
  readonly onHold: (view: ViewName) => void;
  /** A number on it begins to be typed, or is no more. */
  readonly onTyping: (isTyping: boolean) => void;
}

/** A drawing laid out for the screen, with its equivalent in words, and what can be typed and dragged on it. */
export const Picture = ({ name, fitted, title, says, focus, built, hasHands, onHold, onTyping }: PictureProps) => {
  const svg = useRef<SVGSVGElement>(null);
  const drawn = useRef<SVGGElement>(null);
  const [typing, setTyping] = useState<{ readonly path: string; readonly over: string } | undefined>();
  const parts = useParts();
  const isTyping = typing !== undefined;
  useEffect(() => {
    if (!isTyping) return;
    onTyping(true);
    return () => onTyping(false);
  }, [isTyping, onTyping]);
  const { view, width, height, primitives } = fitted;
  const isLit = useMemo(() => litBy(focus, built.job), [focus, built]);
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: an SVG that holds what is pressed is no fieldset */}
      <svg
        role="group"
        className="drawing"
        data-view={name}
        ref={svg}
        aria-label={words.sheet.hands(title)}
        width={width}
        height={height}
        viewBox={`${view.left} ${view.top} ${view.width} ${view.height}`}
      >
        {/* biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: nothing in it is pressed */}
        <g ref={drawn} role="img" aria-labelledby={`${name}-title ${name}-says`}>
          <title id={`${name}-title`}>{title}</title>
          <desc id={`${name}-says`}>{says}</desc>
          <MovingPrimitives primitives={primitives} isLit={isLit} box={drawn} />
        </g>
        {parts && hasHands && (
          <parts.Hands
            built={built}
            fitted={fitted}
            onHold={onHold}
            onType={(path, over) => setTyping({ path, over })}
          />
        )}
      </svg>
      {parts && typing && (
        <parts.TypedField
          key={typing.over}
          path={typing.path}
          over={() => svg.current?.querySelector<SVGElement>(typing.over) ?? undefined}
          onClose={() => setTyping(undefined)}
        />
      )}
    </>
  );
};
