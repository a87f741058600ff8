import type { Settled } from '../settle.ts';
import { pen } from '../shape/path.ts';
import type { Segment } from '../shape/types.ts';
import type { Stretch } from './spans.ts';

/** How far the deck's front and back edges are taken off where a plane along the guitar cuts them at y, mm; 0 where they are square, and beyond the deck. */
export const edgeAt = ({ bridge }: Settled, y: number): number =>
  bridge.edge === 'square' || Math.abs(y) > bridge.deckWidth / 2 + 1e-9 ? 0 : bridge.edgeSize;

/** What one edge takes off in a plane along the guitar, mm²: a square of its size less a quarter circle, or half a square. */
export const edgeArea = ({ bridge }: Settled, size: number): number =>
  size ** 2 * (bridge.edge === 'round' ? 1 - Math.PI / 4 : 1 / 2);

/** A level top between two ends with its edges taken off so far; y DOWN. */
export const edgedTop = ({ bridge }: Settled, [from, to]: Stretch, y: number, size: number): readonly Segment[] => {
  const r = Math.min(size, (to - from) / 2);
  if (r === 0) return pen({ x: from, y }).line({ x: to, y }).path().segments;
  const first = pen({ x: from, y: y + r });
  const up = { x: from + r, y };
  const over = (bridge.edge === 'round' ? first.arc(up, r, 1) : first.line(up)).line({ x: to - r, y });
  const down = { x: to, y: y + r };
  return (bridge.edge === 'round' ? over.arc(down, r, 1) : over.line(down)).path().segments;
};
