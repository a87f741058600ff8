import { memo } from 'react';
import { isSame } from '../../../../geometry/changes.ts';
import type { Text } from '../../../../geometry/drawing.ts';
import { fieldTitle } from '../../strings.ts';
import { useBench, useBenchState } from '../../use-bench.ts';
import { words } from '../../words.ts';
import { pressed } from './press.ts';
import { useSpotBox } from './spot-box.ts';

interface SpotProps {
  readonly text: Text;
  readonly path: string;
  /** Px per mm. */
  readonly scale: number;
  /** A grip of the same number is the keyboard's way here. */
  readonly hasGrip: boolean;
  readonly onOpen: (path: string, spot: string) => void;
}

/** A number on the drawing that can be typed into where it stands: pressed, it becomes an input. */
export const Spot = memo(({ text, path, scale, hasGrip, onOpen }: SpotProps) => {
  const bench = useBench();
  const title = useBenchState(({ job }) => fieldTitle(job, path));
  const { box, under } = useSpotBox(text, scale);
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: an SVG has no button of its own */}
      <rect
        className="spot"
        data-spot={text.id}
        data-of={text.id}
        role="button"
        tabIndex={hasGrip ? -1 : 0}
        aria-label={words.hands.typeAt(title, text.text)}
        {...box}
        onClick={pressed(() => onOpen(path, text.id))}
        onKeyDown={(event) => {
          if (event.key !== 'Enter' && event.key !== ' ') return;
          event.preventDefault();
          onOpen(path, text.id);
        }}
        onFocus={() => bench.enter(path)}
        onBlur={() => bench.leave(path)}
        onPointerEnter={({ pointerType }) => {
          if (pointerType === 'mouse') bench.point(path);
        }}
        onPointerLeave={() => bench.point(undefined)}
      />
      <path className="under" d={under} />
    </>
  );
}, isSame);
