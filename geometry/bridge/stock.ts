import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import { bounds, boundsOf } from '../shape/measure.ts';
import { footprintOutline } from './outline.ts';
import { undersideHeight } from './surface.ts';
import { topLine } from './top-line.ts';

/** A raw piece, mm: length across the guitar, depth along it. */
export interface RawPiece {
  readonly length: number;
  readonly depth: number;
  readonly thickness: number;
  /** Which way its grain runs, in words. */
  readonly grain: string;
}

const allowed = (
  allowance: number,
  [length, depth, thickness]: readonly [number, number, number],
  grain: string,
): RawPiece => ({
  length: length + 2 * allowance,
  depth: depth + 2 * allowance,
  thickness: thickness + 2 * allowance,
  grain,
});

/** The bridge's own size, mm: its footprint's length and depth, and from the lowest place of its underside, at a corner of the dome, up to the highest of its top. */
export const bridgeSize = (
  job: Settled,
  design: Design,
): readonly [length: number, depth: number, thickness: number] => {
  const { minX, maxX, minY, maxY } = bounds(footprintOutline(job, design));
  const highest = -boundsOf([topLine(job)]).minY;
  const lowest = Math.min(
    ...[minX, maxX].flatMap((y) => [minY, maxY].map((x) => undersideHeight(job, y, x - design.saddleLine.x))),
  );
  return [maxX - minX, maxY - minY, highest - lowest];
};

/** The smallest blank for the bridge, with the allowance on every side, mm. Its grain runs along its length. */
export const bridgeBlank = (job: Settled, design: Design): RawPiece =>
  allowed(job.stock.allowance, bridgeSize(job, design), 'along the bridge’s length, across the guitar');

const capGrain = {
  across: 'along the cap’s length, across the guitar',
  along: 'along the guitar, square to the cap’s length',
  slanted: 'at 45° to the cap’s length',
} as const;

/** The smallest blank for the plate cap, with the allowance on every side, mm; undefined where there is no cap. */
export const capBlank = ({ plate, stock }: Settled): RawPiece | undefined =>
  plate.cap === 'none'
    ? undefined
    : allowed(stock.allowance, [plate.length, plate.depth, plate.cap], capGrain[plate.grain]);
