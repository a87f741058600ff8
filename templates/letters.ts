/// <reference path="./fontkit.d.ts" />
import * as fontkit from 'fontkit';
import type { Text } from '../geometry/drawing.ts';
import { path, pen, placePoint } from '../geometry/shape/index.ts';
import { lerp } from '../geometry/shape/point.ts';
import type { Path, Point, Segment } from '../geometry/shape/types.ts';
import { textWidth } from '../geometry/text.ts';
import { drawable } from './drawable.ts';
import { visualRuns } from './visual-order.ts';

/** A line of text as the outlines of its letters, to be filled by the nonzero rule; mm. */
export interface Letters {
  readonly kind: 'letters';
  readonly id: string;
  readonly text: string;
  readonly paths: readonly Path[];
}

/** DejaVu Sans as TrueType files. */
export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** Neither kerned nor joined: as text is measured, and as the PDF writes it. */
const features = { kern: false, liga: false, clig: false, dlig: false, calt: false };

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

interface Face {
  readonly face: fontkit.FontFace;
  readonly characters: ReadonlySet<number>;
}

/** Fonts that were read: their tables take longer than most drawings. */
const known = new WeakMap<Uint8Array, Face>();

const faceOf = (bytes: Uint8Array): Face => {
  const before = known.get(bytes);
  if (before) return before;
  const face = fontkit.create(bytes);
  const read = { face, characters: new Set(face.characterSet) };
  known.set(bytes, read);
  return read;
};

/**
 * What draws texts as the outlines of their letters, each at its own advance, so that a line is as wide as `textWidth` measures it. A character that the font
 * lacks is written out as its code and the whole set smaller, as in the PDF. Throws when the bytes are no font.
 */
export const lettersOf = ({ regular, bold }: Fonts): ((text: Text) => Letters) => {
  const faces = { regular: faceOf(regular), bold: faceOf(bold) };
  return (text) => {
    const { face, characters } = text.bold ? faces.bold : faces.regular;
    const words = drawable(text.text, characters);
    const laid = visualRuns(words).map((run) => face.layout(run, features));
    const units = laid.flatMap(({ positions }) => positions).reduce((sum, { xAdvance }) => sum + xAdvance, 0);
    const ems = units / face.unitsPerEm;
    const room = textWidth(text.text, 1, text.bold);
    const size = words.includes('[U+') ? text.size * Math.min(1, room / ems) : text.size;
    const scale = size / face.unitsPerEm;
    const back = { start: 0, middle: units / 2, end: units }[text.anchor];
    const turn = (text.turn * Math.PI) / 180;
    let pen = -back;
    const paths = laid.flatMap(({ glyphs, positions }) =>
      glyphs.flatMap((glyph, k) => {
        const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[k] ?? {};
        const left = pen + xOffset;
        pen += xAdvance;
        return outlines(glyph, (x, y) =>
          placePoint({ x: (left + x) * scale, y: -(yOffset + y) * scale }, { turn, dx: text.at.x, dy: text.at.y }),
        );
      }),
    );
    return { kind: 'letters', id: text.id, text: text.text, paths };
  };
};
