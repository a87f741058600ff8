import type { Text } from '../../../../geometry/drawing.ts';
import { textBox } from '../../../../geometry/text-box.ts';
import { coarse } from '../../media.ts';
import { useMedia } from '../../use-media.ts';

/** Least size of what can be pressed, px: with a mouse, and with a finger. */
const leastFine = 25;
const leastCoarse = 45;

/** The box round a text in which it can be pressed, and the line under it as it is read, as path data, mm; `scale` in px per mm. */
export const useSpotBox = (text: Text, scale: number) => {
  const least = (useMedia(coarse) ? leastCoarse : leastFine) / scale;
  const { minX, minY, maxX, maxY } = textBox(text);
  const width = Math.max(least, maxX - minX);
  const height = Math.max(least, maxY - minY);
  return {
    box: { x: (minX + maxX - width) / 2, y: (minY + maxY - height) / 2, width, height },
    under: text.turn === 0 ? `M${minX},${maxY} H${maxX}` : `M${maxX},${minY} V${maxY}`,
  };
};
