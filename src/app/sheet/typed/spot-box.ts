import type { Text } from '../../../../geometry/drawing.ts';
import { textBox } from '../../../../geometry/text-box.ts';
import { coarse } from '../../media.ts';
import { useMedia } from '../../use-media.ts';

/** Least size of what can be pressed, px: with a mouse, and with a finger. */
const leastFine = 25;
const leastCoarse = 45;

/** The box round a text in which it can be pressed, mm; `scale` in px per mm. */
export const useSpotBox = (text: Text, scale: number) => {
  const least = (useMedia(coarse) ? leastCoarse : leastFine) / scale;
  const box = textBox(text);
  const width = Math.max(least, box.maxX - box.minX);
  const height = Math.max(least, box.maxY - box.minY);
  return { x: (box.minX + box.maxX - width) / 2, y: (box.minY + box.maxY - height) / 2, width, height };
};
