import type { Label, Primitive } from '../../../geometry/drawing.ts';
import { boundsOfPrimitives, layOut } from '../../../geometry/layout.ts';
import type { Bounds } from '../../../geometry/shape/types.ts';
import type { Placed } from '../../../geometry/views/index.ts';

/** The room on screen, CSS px; without a height only the width counts. */
export interface Room {
  readonly width: number;
  readonly height?: number;
}

/** The marks that are laid out, and where their views stand; what they are laid out to, where that was needed to place them. */
export interface Drawn extends Pick<Placed, 'marks' | 'places'> {
  readonly primitives?: readonly Primitive[];
  readonly bounds?: Bounds;
}

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
/** How much of it one that is newly fitted fills. */
const snug = 0.975;
/** Where a fit begins, px per mm. */
const usual = 2;
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
  const { marks, places, primitives = layOut(marks, { em, say }), bounds } = draw(em);
  const { minX, minY, maxX, maxY } = bounds ?? boundsOfPrimitives(primitives);
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

/** How much a drawing grows with its scale, px for each px per mm: as between two trials, or at first as if texts took a tenth of it. Never taken as less than texts that stand over each other would leave. */
const slopeOf = (side: 'width' | 'height', trial: Trial, before: Trial | undefined): number => {
  const whole = trial[side] / trial.scale;
  if (before === undefined) return 0.9 * whole;
  return Math.max(0.3 * whole, (trial[side] - before[side]) / (trial.scale - before.scale));
};

/**
 * The largest scale, or nearly, at which a drawing fits a room while its texts keep their height on screen. What the texts take stays the same in px, so the size in px grows nearly evenly with the scale, and from two
 * scales follows a third. Texts that begin to stand over each other on the way cost another step. A room that is too low is overrun downwards.
 */
export const fitRoom = (options: Fit): Fitted => {
  const { room, seed } = options;
  const wide = room.width - 2 * pad;
  const high = room.height === undefined ? Number.POSITIVE_INFINITY : room.height - 2 * pad;
  const filled = (t: Trial) => Math.max(t.width / wide, t.height / high);

  let trial = tryScale(options, seed ?? usual);
  if (seed === undefined || filled(trial) > 1 || filled(trial) < enough) {
    let before: Trial | undefined;
    let best: Trial | undefined;
    for (let step = 0; step < 10; step += 1) {
      if (filled(trial) <= 1 && trial.scale > (best?.scale ?? 0)) best = trial;
      if (filled(trial) <= 1 && (filled(trial) >= snug || trial.scale >= most)) break;
      if (filled(trial) > 1 && trial.scale <= least) break;
      const spare = Math.min(
        (wide - trial.width) / slopeOf('width', trial, before),
        (high - trial.height) / slopeOf('height', trial, before),
      );
      const scale = Math.min(most, Math.max(least, trial.scale + spare - 0.005));
      if (scale === trial.scale) break;
      before = trial;
      trial = tryScale(options, scale);
    }
    trial = best ?? trial;
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
