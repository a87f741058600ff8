import type { Label, Primitive } from '../../../geometry/drawing.ts';
import { boundsOfPrimitives, layOut } from '../../../geometry/layout.ts';
import type { Placed } from '../../../geometry/views/index.ts';

/** The room on screen, CSS px; without a height only the width counts. */
export interface Room {
  readonly width: number;
  readonly height?: number;
}

/** The marks that are laid out, and where their views stand. */
export type Drawn = Pick<Placed, 'marks' | 'places'>;

/** A drawing laid out for the screen. */
export interface Fitted extends Drawn {
  readonly primitives: readonly Primitive[];
  /** What the SVG's viewBox shows, mm. */
  readonly view: { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
  /** The size at which it shows it, px. */
  readonly width: number;
  readonly height: number;
  /** Px per mm. */
  readonly scale: number;
}

export interface Fit {
  /** What is drawn for a text height of so many mm. */
  readonly draw: (em: number) => Drawn;
  readonly say: (label: Label) => string;
  readonly room: Room;
  /** Text height on screen, px. */
  readonly text: number;
  /** A scale to begin with: kept when the drawing fits the room with it, so that a drawing does not breathe while a number is typed. */
  readonly seed?: number | undefined;
}

/** Around the drawing, px; a scale below which nothing could be told apart, and one above which nothing is gained, px per mm. */
const pad = 10;
const least = 0.7;
const most = 9;
/** How much of the room a drawing fills that is good enough. */
const enough = 0.95;
/** Below this, px per mm, texts crowd each other: a drawing is rather scrolled than drawn smaller for the room’s height. */
const crowded = 1.6;

interface Trial extends Drawn {
  readonly scale: number;
  readonly primitives: readonly Primitive[];
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
}

/** The least height of a room, px, in which a drawing is neither scrolled nor crowded. */
export const leastHeight = (options: Omit<Fit, 'room'>): number =>
  Math.ceil(tryScale({ ...options, room: { width: 0 } }, crowded).height + 2 * pad);

const tryScale = ({ draw, say, text }: Fit, scale: number): Trial => {
  const em = text / scale;
  const { marks, places } = draw(em);
  const primitives = layOut(marks, { em, say });
  const { minX, minY, maxX, maxY } = boundsOfPrimitives(primitives);
  return {
    marks,
    places,
    scale,
    primitives,
    left: minX,
    top: minY,
    width: (maxX - minX) * scale,
    height: (maxY - minY) * scale,
  };
};

/**
 * The largest scale at which a drawing fits a room while its texts keep their height on screen. What the texts take stays the same in px, so the
 * size in px grows nearly evenly with the scale, by what the bare drawing measures in mm: from a scale that is too large a few steps down that
 * slope lead to it. Texts that begin to stand over each other on the way cost another step. A room that is too low is overrun downwards.
 */
export const fitRoom = (options: Fit): Fitted => {
  const { room, seed } = options;
  const wide = room.width - 2 * pad;
  const high = room.height === undefined ? Number.POSITIVE_INFINITY : room.height - 2 * pad;
  const filled = (t: Trial) => Math.max(t.width / wide, t.height / high);

  let trial = tryScale(options, seed ?? most);
  if (seed === undefined || filled(trial) > 1 || filled(trial) < enough) {
    const large = tryScale(options, most);
    const larger = tryScale(options, 2 * most);
    const slope = (side: 'width' | 'height') => (larger[side] - large[side]) / most;
    trial = large;
    for (let step = 0; step < 8 && filled(trial) > 1 && trial.scale > least; step += 1) {
      const over = Math.max((trial.width - wide) / slope('width'), (trial.height - high) / slope('height'));
      trial = tryScale(options, Math.max(least, trial.scale - over - 0.005));
    }
  }

  if (room.height !== undefined && trial.scale < crowded) {
    const { scale } = fitRoom({ ...options, room: { width: room.width }, seed: undefined });
    trial = tryScale(options, Math.min(scale, crowded));
  }
  const { marks, places, scale, primitives } = trial;
  const width = Math.max(room.width, trial.width + 2 * pad);
  const height = trial.height + 2 * pad;
  return {
    marks,
    places,
    primitives,
    scale,
    width,
    height,
    view: {
      left: trial.left - (width - trial.width) / 2 / scale,
      top: trial.top - pad / scale,
      width: width / scale,
      height: height / scale,
    },
  };
};
