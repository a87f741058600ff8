/// <reference path="./fontkit.d.ts" />
import type * as fontkit from 'fontkit';
import type { Text } from '../geometry/drawing.ts';
import { path, pen, placePoint } from '../geometry/shape/index.ts';
import { lerp } from '../geometry/shape/point.ts';
import type { Path, Point, Segment } from '../geometry/shape/types.ts';
import { type Face, readFace, setLine } from './set-line.ts';

/** A line of text as the outlines of its letters, to be filled by the nonzero rule; mm. */
export interface Letters {
  readonly kind: 'letters';
  readonly id: string;
  readonly text: string;
  readonly paths: readonly Path[];
  /** The characters that no font has: they stand as their codes. */
  readonly lacking: readonly string[];
}

/** DejaVu Sans as TrueType files, and a font for what it lacks. */
export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
  readonly other?: Uint8Array | undefined;
}

/** A glyph's closed outlines, each point put in its place. A quadratic curve is raised to the cubic that is the same curve. */
const outlines = (glyph: fontkit.FontGlyph, put: (x: number, y: number) => Point): readonly Path[] => {
  const paths: Path[] = [];
  let segments: Segment[] = [];
  let from: Point = { x: 0, y: 0 };
  let at = from;
  const draw = (segment: Segment, to: Point) => {
    segments.push(segment);
    at = to;
  };
  const finish = () => {
    if (segments.length > 0) {
      const open = at.x !== from.x || at.y !== from.y;
      paths.push(path(open ? [...segments, ...pen(at).line(from).path().segments] : segments, true));
    }
    segments = [];
  };
  for (const { command, args } of glyph.path.commands) {
    const points = Array.from({ length: args.length / 2 }, (_, k) =>
      put(args[2 * k] as number, args[2 * k + 1] as number),
    );
    const [a, b, c] = points as [Point, Point, Point];
    if (command === 'moveTo') {
      finish();
      from = a;
      at = a;
    } else if (command === 'lineTo') {
      if (a.x !== at.x || a.y !== at.y) draw({ kind: 'line', from: at, to: a }, a);
    } else if (command === 'quadraticCurveTo')
      draw({ kind: 'cubic', from: at, c1: lerp(at, a, 2 / 3), c2: lerp(b, a, 2 / 3), to: b }, b);
    else if (command === 'bezierCurveTo') draw({ kind: 'cubic', from: at, c1: a, c2: b, to: c }, c);
  }
  finish();
  return paths;
};

/**
 * What draws texts as the outlines of their letters, as the PDF writes them: a line is as wide as `textWidth` measures it. A character that the fonts
 * lack is written out as its code and the whole set smaller, as in the PDF. Throws when the bytes are no font.
 */
export const lettersOf = ({ regular, bold, other }: Fonts): ((text: Text) => Letters) => {
  const others: readonly Face[] = other ? [readFace(other)] : [];
  const faces = { regular: [readFace(regular), ...others], bold: [readFace(bold), ...others] };
  return (text) => {
    const line = setLine(text.text, text.bold, { faces: text.bold ? faces.bold : faces.regular });
    const size = text.size * line.scale;
    const back = { start: 0, middle: line.ems / 2, end: line.ems }[text.anchor];
    const turn = (text.turn * Math.PI) / 180;
    const paths = line.groups
      .flatMap((group) => group.parts)
      .flatMap((part) => {
        if (part.kind === 'picture') return [];
        const scale = size / part.face.font.unitsPerEm;
        let pen = part.x - back;
        return part.glyphs.flatMap(({ glyph, dx, dy, advance }) => {
          const left = (pen + dx) * size;
          pen += advance;
          return outlines(glyph, (x, y) =>
            placePoint({ x: left + x * scale, y: -dy * size - y * scale }, { turn, dx: text.at.x, dy: text.at.y }),
          );
        });
      });
    return { kind: 'letters', id: text.id, text: text.text, paths, lacking: line.lacking };
  };
};
