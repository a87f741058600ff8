import type { Problem } from '../../problem.ts';
import { sayFor } from '../../say.ts';
import type { Settled } from '../../settle.ts';
import { atLeast, atMost } from '../limit.ts';
import { pyramidOf } from '../pyramid.ts';
import { type Half, tipOf, undersideHeight } from '../surface.ts';
import { topLineWith, wingSpan } from '../top-line.ts';
import { leastScoop } from './hollow.ts';
import { wings } from './index.ts';
import type { Span } from './wing.ts';

/** The thinnest tip that is worth proposing, mm. */
const thinnestTip = 1;
/** A wing that falls by less than this, mm, is none. */
const leastFall = 0.01;
/** The field's own limits, mm. */
const [narrowestDeck, smallestShoulder, largestScoop] = [20, 0.5, 5000];

/** One side's wing, and the field that its tip is measured in. */
interface Side {
  readonly half: Half;
  readonly span: Span;
  readonly path: 'bridge.tipThickness' | 'bridge.tipTreble';
  readonly tip: number;
  /** “Tips”, or which tip where the two are measured apart. */
  readonly named: string;
}

const sidesOf = (job: Settled): readonly Side[] => {
  const isApart = job.bridge.tipTreble !== 'same';
  return ([-1, 1] as const).flatMap((half): readonly Side[] => {
    const span = wingSpan(job, half);
    if (span === undefined) return [];
    return [
      {
        half,
        span,
        path: isApart && half === 1 ? 'bridge.tipTreble' : 'bridge.tipThickness',
        tip: tipOf(job.bridge, half),
        named: isApart ? `the ${half === 1 ? 'treble' : 'bass'} tip` : 'the tips',
      },
    ];
  });
};

/** Of the sides that one field is measured on, the one that asks most of it. */
const worstOf = (sides: readonly Side[], asks: (side: Side) => number): readonly Side[] =>
  sides.filter((side) => {
    const same = sides.filter(({ path }) => path === side.path);
    return side === same.reduce((worst, one) => (asks(one) > asks(worst) ? one : worst));
  });

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Tips, or the pyramid's foot, that do not lie below the deck's shoulders. */
const rising = (job: Settled, sides: readonly Side[]): readonly Problem[] => {
  const { mm, radius } = sayFor(job);
  const { bridge } = job;
  return worstOf(
    sides.filter(({ span }) => span.fall < leastFall),
    ({ span }) => -span.fall,
  ).map(({ path, tip, span, named }) => {
    const below = tip + span.fall - leastFall;
    const tips = `${capital(named)}, ${mm(tip)} thick, ${named === 'the tips' ? 'do' : 'does'} not lie below the deck’s shoulders: the wings would have to rise.`;
    return below > thinnestTip
      ? {
          path,
          value: tip,
          says: `${tips} Make ${named} at most ${atMost(job, 'length', below)} thick, or the bridge at least ${atLeast(job, 'length', bridge.thickness - span.fall + leastFall)}.`,
        }
      : {
          path: 'bridge.topRadius',
          value: bridge.topRadius,
          says: `${tips} With a top radius of ${radius(bridge.topRadius)} a deck ${mm(bridge.deckWidth)} wide falls too far to its shoulders. Make the radius larger, or the deck narrower.`,
        };
  });
};

const withDeck = (job: Settled, deckWidth: number): Settled => ({ ...job, bridge: { ...job.bridge, deckWidth } });

/** The widest deck that leaves every wing as wide as it falls, mm, by halving; undefined where the narrowest does not, or the slot needs more. */
const widestDeck = (job: Settled): number | undefined => {
  const leaves = (deck: number) => sidesOf(withDeck(job, deck)).every(({ span }) => span.fall <= span.width);
  let [low, high] = [Math.max(narrowestDeck, job.slot.length), job.bridge.deckWidth];
  if (low > high || !leaves(low)) return undefined;
  for (let k = 0; k < 50; k += 1) {
    const middle = (low + high) / 2;
    if (leaves(middle)) low = middle;
    else high = middle;
  }
  return low;
};

/** Arcs that would overhang: the wing falls by more than it is wide. */
const steep = (job: Settled, sides: readonly Side[]): readonly Problem[] => {
  const { mm } = sayFor(job);
  const { bridge } = job;
  if (!wings[bridge.wing].needsWidth(bridge)) return [];
  const tooMuch = ({ span }: Side) => span.fall - span.width;
  return worstOf(
    sides.filter((side) => tooMuch(side) > 0),
    tooMuch,
  ).map((side) => {
    const { tip, span, named } = side;
    const deck = widestDeck(job);
    const article = bridge.wing === 'ogee' ? 'An' : 'A';
    const narrower = deck === undefined ? '' : `the deck at most ${atMost(job, 'length', deck)} wide, or `;
    return {
      path: 'bridge.deckWidth',
      value: bridge.deckWidth,
      says: `${article} ${bridge.wing} wing ${mm(span.width)} wide cannot fall by ${mm(span.fall)}. Make ${narrower}${named} at least ${atLeast(job, 'length', tip + tooMuch(side))} thick; or choose straight wings.`,
    };
  });
};

/** A scoop of a radius of its own that cannot span its wing, or would go deeper than the tip. */
const scooped = (job: Settled, sides: readonly Side[]): readonly Problem[] => {
  const { wing, scoop } = job.bridge;
  if (wing !== 'hollow' || scoop === 'level' || sides.length === 0) return [];
  const least = Math.max(...sides.map(({ span }) => leastScoop(span)));
  if (scoop >= least) return [];
  const { mm, radius } = sayFor(job);
  const worst = sides.reduce((a, b) => (leastScoop(b.span) > leastScoop(a.span) ? b : a));
  const { width, fall } = worst.span;
  const isTooShort = scoop < Math.hypot(width, fall) / 2;
  const why = isTooShort
    ? `does not span a wing ${mm(width)} wide that falls by ${mm(fall)}`
    : fall <= width
      ? `would go deeper than the tip, in a wing ${mm(width)} wide that falls by ${mm(fall)}`
      : `would overhang at the shoulder of a wing ${mm(width)} wide that falls by ${mm(fall)}`;
  const way =
    least <= largestScoop - 1
      ? `Make it at least ${atLeast(job, 'radius', least)}${fall <= width ? ', or “level”' : ''}, or choose straight wings.`
      : 'Choose “level”, or straight wings.';
  return [{ path: 'bridge.scoop', value: scoop, says: `A scoop of ${radius(scoop)} ${why}. ${way}` }];
};

/** A pyramid whose ridge does not stand above its foot. */
const sunken = (job: Settled): readonly Problem[] => {
  if (job.bridge.footprint !== 'pyramid') return [];
  const { mm } = sayFor(job);
  const [bass, treble] = [pyramidOf(job, -1), pyramidOf(job, 1)];
  const least =
    Math.max(...[bass, treble].map(({ foot, ridge, tip }) => (foot.y + tip.y) / 2 - undersideHeight(job, ridge.x))) +
    leastFall;
  const { pyramidThickness } = job.bridge;
  return pyramidThickness >= least
    ? []
    : [
        {
          path: 'bridge.pyramidThickness',
          value: pyramidThickness,
          says: `A pyramid ${mm(pyramidThickness)} thick at its ridge does not stand above its foot. Make the ridge at least ${atLeast(job, 'length', least)} thick, or the tips thinner.`,
        },
      ];
};

/** The largest radius that rounds both shoulders, mm, by halving; undefined where none that can be typed does. */
const largestShoulder = (job: Settled, asked: number): number | undefined => {
  const fits = (shoulder: number) => topLineWith(job, { shoulder }) !== undefined;
  if (!fits(smallestShoulder)) return undefined;
  let [low, high] = [smallestShoulder, asked];
  for (let k = 0; k < 50; k += 1) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
};

const shouldered = (job: Settled): readonly Problem[] => {
  const { shoulder } = job.bridge;
  if (shoulder === 'sharp' || topLineWith(job) !== undefined) return [];
  const { mm } = sayFor(job);
  const largest = largestShoulder(job, shoulder);
  const way =
    largest === undefined || largest < smallestShoulder + 0.02
      ? 'Leave it “sharp”.'
      : `Make it at most ${atMost(job, 'length', largest)}, or “sharp”.`;
  return [
    {
      path: 'bridge.shoulder',
      value: shoulder,
      says: `A shoulder rounded by ${mm(shoulder)} does not fit between deck and wing. ${way}`,
    },
  ];
};

/** Front and back edges that take off more than is there. */
const edged = (job: Settled, sides: readonly Side[]): readonly Problem[] => {
  const { edge, edgeSize, depth, thickness } = job.bridge;
  if (edge === 'square') return [];
  const { mm } = sayFor(job);
  const thinnest = Math.min(thickness, ...sides.map(({ tip, span }) => tip + span.fall));
  const most = Math.min(thinnest, depth / 2);
  const named = edge === 'round' ? 'rounded over' : 'chamfered';
  return edgeSize <= most
    ? []
    : [
        {
          path: 'bridge.edgeSize',
          value: edgeSize,
          says: `Edges ${named} by ${mm(edgeSize)} take off more than is there: the deck is ${mm(thinnest)} thick at its shoulders. Make the edge at most ${atMost(job, 'length', most)}.`,
        },
      ];
};

/** What keeps the wings, the pyramids, the shoulders and the edges from being drawn; empty when nothing does. Each names the number that would do. */
export const wingProblems = (job: Settled): readonly Problem[] => {
  const sides = sidesOf(job);
  const first = [...rising(job, sides), ...sunken(job)];
  if (first.length > 0) return first;
  const second = [...steep(job, sides), ...scooped(job, sides)];
  return second.length > 0 ? second : [...shouldered(job), ...edged(job, sides)];
};
