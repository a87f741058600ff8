import type { Text } from '../../../../geometry/drawing.ts';
import { textBox } from '../../../../geometry/text-box.ts';
import { fieldTitle } from '../../strings.ts';
import { useBench, useBenchState } from '../../use-bench.ts';
import { coarse, useMedia } from '../../use-media.ts';
import { words } from '../../words.ts';

/** Least size of what can be pressed, px: with a mouse, and with a finger. */
const leastFine = 25;
const leastCoarse = 45;

interface SpotProps {
  readonly text: Text;
  readonly path: string;
  /** Px per mm. */
  readonly scale: number;
  /** A grip of the same number is the keyboard's way here. */
  readonly hasGrip: boolean;
  readonly onOpen: () => void;
}

/** A number on the drawing that can be typed into where it stands: pressed, it becomes an input. */
export const Spot = ({ text, path, scale, hasGrip, onOpen }: SpotProps) => {
  const bench = useBench();
  const title = useBenchState(({ job }) => fieldTitle(job, path));
  const least = (useMedia(coarse) ? leastCoarse : leastFine) / scale;
  const box = textBox(text);
  const width = Math.max(least, box.maxX - box.minX);
  const height = Math.max(least, box.maxY - box.minY);
  return (
    // biome-ignore lint/a11y/useSemanticElements: an SVG has no button of its own
    <rect
      className="spot"
      data-spot={text.id}
      role="button"
      tabIndex={hasGrip ? -1 : 0}
      aria-label={words.hands.typeAt(title, text.text)}
      x={(box.minX + box.maxX - width) / 2}
      y={(box.minY + box.maxY - height) / 2}
      width={width}
      height={height}
      onClick={onOpen}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        onOpen();
      }}
      onFocus={() => bench.enter(path)}
      onBlur={() => bench.leave(path)}
      onPointerEnter={({ pointerType }) => {
        if (pointerType === 'mouse') bench.point(path);
      }}
      onPointerLeave={() => bench.point(undefined)}
    />
  );
};
