import type { Settled } from '../settle.ts';
import { arcFromTo } from '../shape/arc.ts';
import { end, path, start } from '../shape/path.ts';
import type { Path, Segment } from '../shape/types.ts';
import { joined } from './graph.ts';
import { deckHeight, tipOf, undersideHeight } from './surface.ts';
import { topLine } from './top-line.ts';

/** The heights that the end profile runs through, above the fret plane at pitch, mm. */
export interface ProfileHeights {
  readonly shoulderBass: number;
  readonly shoulderTreble: number;
  /** The upper edge of the bass tip, and of the treble tip. */
  readonly tipTop: number;
  readonly tipTopTreble: number;
  readonly tipUnderside: number;
}

export const profileHeights = (job: Settled): ProfileHeights => {
  const tipUnderside = undersideHeight(job, job.bridge.length / 2);
  return {
    shoulderBass: deckHeight(job, -job.bridge.deckWidth / 2),
    shoulderTreble: deckHeight(job, job.bridge.deckWidth / 2),
    tipTop: tipUnderside + tipOf(job.bridge, -1),
    tipTopTreble: tipUnderside + tipOf(job.bridge, 1),
    tipUnderside,
  };
};

/**
 * The bridge's end profile at the saddle line, seen from the tail: x across (+ treble), y DOWN from the fret plane, mm; closed. Deck arc, shoulders, wings, tips or pyramids, and the underside on the top's dome. Throws as
 * `topLine` does.
 */
export const endProfile = (job: Settled): Path => {
  const top = topLine(job);
  const half = job.bridge.length / 2;
  const y = -undersideHeight(job, half);
  const [left, right] = [
    { x: -half, y },
    { x: half, y },
  ];
  const under: Segment =
    job.guitar.topRadius === 'flat'
      ? { kind: 'line', from: right, to: left }
      : arcFromTo(right, left, job.guitar.topRadius, -1);
  return path(
    joined([
      { kind: 'line', from: left, to: start(top) },
      ...top.segments,
      { kind: 'line', from: end(top), to: right },
      under,
    ]),
    true,
  );
};
