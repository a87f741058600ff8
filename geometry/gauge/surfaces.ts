import { partBetween } from '../bridge/graph.ts';
import { undersideHeight } from '../bridge/surface.ts';
import { topLineAt } from '../bridge/top-line.ts';
import type { Design } from '../design.ts';
import { fretAt } from '../instrument/frets.ts';
import { crownEdgeOf } from '../saddle/face.ts';
import { acrossAt } from '../saddle/heights.ts';
import type { Settled } from '../settle.ts';
import { arcFromTo } from '../shape/arc.ts';
import { end, start } from '../shape/path.ts';
import { drop } from '../shape/sagitta.ts';
import type { Path } from '../shape/types.ts';

/** What a radius gauge can be laid on, with its name. */
export const surfaceNames = {
  board: 'fingerboard, last fret',
  deck: 'bridge’s deck',
  crown: 'saddle’s crown',
  top: 'soundboard, under the bridge',
} as const;

export type SurfaceName = keyof typeof surfaceNames;

/** A surface across the guitar, bass to treble: its upper line (x + treble, y DOWN from the fret plane, mm) and where each string stands over it. */
export interface Surface {
  readonly line: Path;
  readonly strings: readonly { readonly id: string; readonly name: string; readonly across: number }[];
}

/** An arc of a radius from −half to +half (or a straight line, for `flat`), its middle at a height z. */
const arched = (radius: number | 'flat', half: number, z: number): Path => {
  const y = -z + drop(radius, half);
  const [from, to] = [
    { x: -half, y },
    { x: half, y },
  ];
  return {
    segments: [radius === 'flat' ? { kind: 'line', from, to } : arcFromTo(from, to, radius, 1)],
    closed: false,
  };
};

/** From an outer string to the board's edge, mm: as it is at fret 12, where the board was measured; nothing where it was not. */
const besideStrings = ({ guitar: { boardWidth } }: Settled, { strings, fret12 }: Design): number => {
  const outer = Math.max(...strings.map((s) => Math.abs(acrossAt(s, fret12))));
  return typeof boardWidth === 'number' ? Math.max(0, boardWidth / 2 - outer) : 0;
};

/** The last fret's crown: as far as the board's edges, or where its width was not measured as far as the outer strings. */
const board = (job: Settled, design: Design): Surface => {
  const { scale, frets, boardRadiusEnd } = job.guitar;
  const x = fretAt(scale, frets);
  const strings = design.strings.map((s) => ({ id: s.id, name: s.name, across: acrossAt(s, x) }));
  const half = Math.max(...strings.map((s) => Math.abs(s.across))) + besideStrings(job, design);
  return { line: arched(boardRadiusEnd, half, 0), strings };
};

/** The upper line of a surface that a gauge can be laid on, and the strings over it. */
export const surfaceOf = (name: SurfaceName, job: Settled, design: Design): Surface => {
  if (name === 'board') return board(job, design);
  const over = (line: Path): Surface => {
    const [from, to] = [start(line).x, end(line).x];
    return {
      line,
      strings: design.strings
        .map((s) => ({ id: s.id, name: s.name, across: s.acrossAtSaddle }))
        .filter(({ across }) => across >= from && across <= to),
    };
  };
  switch (name) {
    case 'deck': {
      const half = job.bridge.deckWidth / 2;
      const line = topLineAt(job, design, design.saddleLine.x);
      return over({ segments: partBetween(line, -half, half), closed: false });
    }
    case 'crown':
      // `solve` refuses a crown that does not reach the saddle's ends.
      return over({ segments: crownEdgeOf(design, 'across') ?? [], closed: false });
    case 'top':
      return over(arched(job.guitar.topRadius, job.bridge.length / 2, undersideHeight(job, 0)));
  }
};
