import type { Label } from '../../../geometry/drawing.ts';
import { layOut } from '../../../geometry/layout.ts';
import { boundsOf } from '../../../geometry/shape/bounds.ts';
import type { Point } from '../../../geometry/shape/types.ts';
import type { ViewName } from '../../../geometry/views/index.ts';
import { inView, onDrawing, type Place, viewUnder } from '../../../geometry/views/place.ts';
import type { Fit, Fitted } from './fit.ts';

/**
 * How closely a drawing is looked at: px per mm, and the place that stands in the middle of the frame, in a view's own true mm, so that it is the same place when the views are placed or
 * stretched otherwise. Without a place, the middle of the bridge from above, or of a drawing that does not show it so.
 */
export interface Look {
  readonly scale: number;
  readonly at?: { readonly view: ViewName; readonly point: Point };
}

/** One step closer by button or key. */
export const step = 1.25;
/** How much closer or farther a drawing may be looked at than as it fits its room. */
const [farthest, closest] = [0.4, 40];

const clamp = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

const scaleWithin = (fitted: Fitted, scale: number): number =>
  clamp(scale, farthest * fitted.scale, closest * fitted.scale);

/** The middle of the frame on the drawing, mm. */
const middleOf = ({ view }: Pick<Fitted, 'view'>): Point => ({
  x: view.left + view.width / 2,
  y: view.top + view.height / 2,
});

/** The middle of the bridge from above, mm; undefined where it is not drawn so. Between several views there may be bare paper. */
const middleOfBridge = ({ marks }: Pick<Fitted, 'marks'>): Point | undefined => {
  const outline = marks.find(({ id }) => id === 'bridge.outline' || id === 'above.bridge.outline');
  if (outline?.kind !== 'path') return undefined;
  const { minX, minY, maxX, maxY } = boundsOf([outline.path]);
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
};

/** A place kept on a fitted drawing, mm. */
const keptOn = ({ view: { left, top, width, height } }: Pick<Fitted, 'view'>, { x, y }: Point): Point => ({
  x: clamp(x, left, left + width),
  y: clamp(y, top, top + height),
});

/** The look that shows a place of the drawing, mm, in the middle of the frame: kept on the drawing, and within reason. */
const lookFor = (fitted: Fitted, scale: number, middle: Point): Look => {
  const point = keptOn(fitted, middle);
  const view = viewUnder(fitted.places, point);
  const place = fitted.places[view] as Place;
  return { scale: scaleWithin(fitted, scale), at: { view, point: inView(place, point) } };
};

/** The place in the drawing, mm, under a place in the frame, px from its upper left corner. */
export const placeUnder = ({ view, scale }: Pick<Fitted, 'view' | 'scale'>, px: Point): Point => ({
  x: view.left + px.x / scale,
  y: view.top + px.y / scale,
});

/** A place of the drawing, mm, in the frame, px from its upper left corner. */
export const pxOf = ({ view, scale }: Pick<Fitted, 'view' | 'scale'>, p: Point): Point => ({
  x: (p.x - view.left) * scale,
  y: (p.y - view.top) * scale,
});

/**
 * So many times as close, with what lies under one place of the frame (px; its middle if none is given) moved to another (the same place if none is given).
 */
export const closer = (
  fitted: Fitted,
  shown: Fitted,
  times: number,
  px: Point = { x: shown.width / 2, y: shown.height / 2 },
  to: Point = px,
): Look => {
  const scale = scaleWithin(fitted, shown.scale * times);
  const under = placeUnder(shown, px);
  return lookFor(fitted, scale, {
    x: under.x - (to.x - shown.width / 2) / scale,
    y: under.y - (to.y - shown.height / 2) / scale,
  });
};

/** The drawing moved with the hand by so many px. */
export const moved = (fitted: Fitted, shown: Fitted, px: Point): Look => {
  const { x, y } = middleOf(shown);
  return lookFor(fitted, shown.scale, { x: x - px.x / shown.scale, y: y - px.y / shown.scale });
};

/** The look that keeps a view where it is in the frame, whatever becomes of the drawing. */
export const steadyLook = (shown: Fitted, view: ViewName): Look => {
  const place = shown.places[view];
  return place ? { scale: shown.scale, at: { view, point: inView(place, middleOf(shown)) } } : { scale: shown.scale };
};

interface Laid {
  readonly scale: number;
  readonly say: (label: Label) => string;
  readonly primitives: Fitted['primitives'];
}

/** What was laid out last of each fitted drawing: it stays while the drawing is only moved. */
const lastLaid = new WeakMap<Fitted, Laid>();

/** A fitted drawing's strokes and texts at another scale. */
const laidAt = (fitted: Fitted, scale: number, { text, say }: Pick<Fit, 'text' | 'say'>): Fitted['primitives'] => {
  if (scale === fitted.scale) return fitted.primitives;
  const last = lastLaid.get(fitted);
  if (last?.scale === scale && last.say === say) return last.primitives;
  const primitives = layOut(fitted.marks, { em: text / scale, say });
  lastLaid.set(fitted, { scale, say, primitives });
  return primitives;
};

/**
 * A fitted drawing as it is looked at. Its views stand where they were fitted, so that what lies under the pointer stays there; its texts are laid out anew and keep their height on
 * screen (`text`, px) while the lines grow. The frame is as large as the fitted drawing, and at least `high` px; or just `exactly` so high.
 */
export const lookAt = (
  fitted: Fitted,
  look: Look | undefined,
  options: {
    readonly text: number;
    readonly say: (label: Label) => string;
    readonly high?: number;
    readonly exactly?: number | undefined;
  },
): Fitted => {
  const scale = look === undefined ? fitted.scale : scaleWithin(fitted, look.scale);
  const place = look?.at && fitted.places[look.at.view];
  const begun = (look !== undefined && middleOfBridge(fitted)) || middleOf(fitted);
  // Another job's drawing may lie elsewhere.
  const middle = look?.at && place ? keptOn(fitted, onDrawing(place, look.at.point)) : begun;
  const height = options.exactly ?? Math.max(fitted.height, options.high ?? 0);
  const view = { width: fitted.width / scale, height: height / scale };
  return {
    ...fitted,
    primitives: laidAt(fitted, scale, options),
    scale,
    height,
    view: { ...view, left: middle.x - view.width / 2, top: middle.y - view.height / 2 },
  };
};
