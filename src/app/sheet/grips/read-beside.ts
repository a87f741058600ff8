import { grown } from '../../../../geometry/berths.ts';
import { pointOn } from '../../../../geometry/shape/along.ts';
import { lengthOf } from '../../../../geometry/shape/measure.ts';
import type { Bounds, Point } from '../../../../geometry/shape/types.ts';
import { textWidth } from '../../../../geometry/text.ts';
import { wordBox } from '../../../../geometry/text-box.ts';
import type { Grip } from '../../../../geometry/views/grips/index.ts';
import { wrap } from '../../../../templates/wrap.ts';
import type { Fitted } from '../fit.ts';
import { isGeared } from './geared.ts';

/** Text height, and the room round it, px. */
export const size = 13;
const pad = 6;
/** How near it comes to the drawing's sides, and how wide its lines may be, px. */
const edge = 2;
const widest = 420;
/** How far it stays off a pointer's hand, and off a finger's, px. */
const off = { pointer: 20, finger: 36 };
/** How far a hand that is geared goes from its grip, px, as a rule. */
const geared = 48;
/** How much farther it may stand off, and how far apart places are tried, px. */
const reach = 60;
const step = 6;
/** What it leaves free round a word, px. */
const free = 2;
/** Nearer to a word, px, it would soon have to go elsewhere: such a place counts as so much farther off, px. */
const close = 12;
const soon = 40;
/** Wide lines are looked at so far apart, px; and each such piece that is covered counts as so much farther off, px. */
const piece = 6;
const onPiece = 3;
/** It stays where it is until another place covers less than this share of what it covers itself. */
const worthIt = 0.5;

/** A hand that holds a grip: whether it is a finger's, and where the frame stood beside it, px from the grip. */
export interface Holding {
  readonly isFinger: boolean;
  readonly kept?: Point | undefined;
}

/** What is read beside a grip: its rows, px from the grip, and the frame round them; whether that stands beside the hand as it did. */
export interface Beside {
  readonly frame: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly rows: readonly { readonly text: string; readonly x: number; readonly y: number }[];
  readonly isKept: boolean;
}

/** By how much a span reaches into another. */
const shared = (a: number, b: number, c: number, d: number): number => Math.max(0, Math.min(b, d) - Math.max(a, c));

/** How much of some boxes lies under a frame, px². */
const covered = ({ x, y, width, height }: Beside['frame'], boxes: readonly Bounds[]): number =>
  boxes.reduce(
    (sum, { minX, minY, maxX, maxY }) => sum + shared(x, x + width, minX, maxX) * shared(y, y + height, minY, maxY),
    0,
  );

/** Whether a hand hides a frame, which goes so many px up and down from its grip: a pointer what is close to it, a finger also what lies below. */
const isHidden = ({ x, y, width, height }: Beside['frame'], isFinger: boolean, gone: number): boolean => {
  const clear = isFinger ? off.finger : off.pointer;
  const isOver = y + height <= -clear - gone;
  const isBeside = x + width <= -clear || x >= clear;
  if (isFinger) return !isOver && !(isBeside && y + height <= clear);
  return !isOver && !isBeside && y < clear + gone;
};

/** The words of a drawing, px from a place on it. */
const wordsAbout = (at: Point, { scale, primitives }: Pick<Fitted, 'scale' | 'primitives'>): readonly Bounds[] =>
  primitives.flatMap((p) => {
    if (p.kind !== 'text' || p.text === '') return [];
    const { minX, minY, maxX, maxY } = wordBox(p);
    return {
      minX: (minX - at.x) * scale,
      maxX: (maxX - at.x) * scale,
      minY: (minY - at.y) * scale,
      maxY: (maxY - at.y) * scale,
    };
  });

/** Places on the wide lines of a drawing, evenly, px from a place on it. */
const outlinesAbout = (at: Point, { scale, primitives }: Pick<Fitted, 'scale' | 'primitives'>): readonly Point[] =>
  primitives.flatMap((p) => {
    if (p.kind !== 'stroke' || p.line !== 'outline') return [];
    return p.path.segments.flatMap((segment) => {
      const pieces = Math.ceil((lengthOf(segment) * scale) / piece);
      return Array.from({ length: pieces }, (_, k) => {
        const { x, y } = pointOn(segment, (k + 0.5) / pieces);
        return { x: (x - at.x) * scale, y: (y - at.y) * scale };
      });
    });
  });

const isUnder = ({ x, y, width, height }: Beside['frame'], p: Point): boolean =>
  p.x > x && p.x < x + width && p.y > y && p.y < y + height;

/** Lines in a frame so wide at most, and how large that is, px. */
const wrapped = (lines: readonly string[], wide: number) => {
  const texts = lines.flatMap((line) => wrap(line, wide - 2 * pad, size));
  return {
    texts,
    width: Math.max(...texts.map((text) => textWidth(text, size))) + 2 * pad,
    height: texts.length * size * 1.3 + 2 * pad - 2,
  };
};

/**
 * Lines beside a grip: where they cover no word of the drawing and little of what it shows, as near as may be to right over the hand; where there is no such place near the hand, where they cover least. They stay beside the hand as they did for as long as they would not cover more there than need be. Never hidden by the hand,
 * as far as the drawing leaves room, and never beyond the drawing's sides.
 */
export const readBeside = (
  grip: Grip,
  lines: readonly string[],
  shown: Fitted,
  { isFinger, kept }: Holding,
): Beside => {
  const { at } = grip;
  const gone = isGeared(grip) ? geared : 0;
  const { scale, view } = shown;
  const [left, top] = [(view.left - at.x) * scale + edge, (view.top - at.y) * scale + edge];
  const [right, bottom] = [left + view.width * scale - 2 * edge, top + view.height * scale - 2 * edge];
  const clear = isFinger ? off.finger : off.pointer;
  const whole = wrapped(lines, Math.min(widest, right - left));
  const isLow = whole.height > -clear - gone - top && (isFinger || whole.height > bottom - clear - gone);
  // Where there is no room over the hand, it has to stand beside it.
  const { texts, width, height } = isLow ? wrapped(lines, Math.min(widest, Math.max(-left, right) - clear)) : whole;
  const within = ({ x, y }: Point): Beside['frame'] => ({
    x: Math.max(left, Math.min(x, right - width)),
    y: Math.max(top, Math.min(y, bottom - height)),
    width,
    height,
  });
  const over = { x: -width / 2, y: -clear - height };
  const words = wordsAbout(at, shown);
  const [freed, wide] = [free, close].map((by) => words.map((word) => grown(word, by))) as [Bounds[], Bounds[]];

  const places = function* (): Generator<Beside['frame']> {
    for (let y = over.y - reach; y <= clear + reach; y += step)
      for (let x = -clear - reach - width; x <= clear + reach; x += step) yield within({ x, y });
  };
  const best = (): Beside['frame'] => {
    let found: { readonly frame: Beside['frame']; readonly covers: number; readonly away: number } | undefined;
    const isBetter = (covers: number, away: number) =>
      found === undefined || covers < found.covers || (covers === found.covers && away < found.away);
    const outlines = outlinesAbout(at, shown);
    for (const frame of [within(over), ...places()]) {
      if (isHidden(frame, isFinger, gone)) continue;
      const covers = covered(frame, freed);
      const bare = Math.hypot(frame.x - over.x, frame.y - over.y) + (covered(frame, wide) > 0 ? soon : 0);
      if (!isBetter(covers, bare)) continue;
      const away = bare + onPiece * outlines.filter((p) => isUnder(frame, p)).length;
      if (isBetter(covers, away)) found = { frame, covers, away };
    }
    // In a drawing that is too small for both, under the hand.
    return found?.frame ?? within({ x: over.x, y: clear });
  };
  const stays = (frame: Beside['frame']): boolean => {
    if (isHidden(frame, isFinger, gone)) return false;
    const covers = covered(frame, freed);
    return covers === 0 || covered(best(), freed) >= worthIt * covers;
  };
  const before = kept && within(kept);
  const isKept = before !== undefined && stays(before);
  const frame = isKept ? before : best();
  return {
    frame,
    rows: texts.map((text, k) => ({ text, x: frame.x + pad, y: frame.y + pad + size * (0.85 + 1.3 * k) })),
    isKept,
  };
};
