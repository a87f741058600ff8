import { type RefObject, useEffect, useEffectEvent, useMemo } from 'react';
import type { Point } from '../../../../geometry/shape/types.ts';
import { formatQuantity } from '../../../../geometry/units.ts';
import { type ViewName, views } from '../../../../geometry/views/index.ts';
import { inView, onDrawing, type Place, viewUnder } from '../../../../geometry/views/place.ts';
import { measured } from '../../../../geometry/views/ruler.ts';
import { type Edge, edgesOf, snapsNear } from '../../../../geometry/views/snap.ts';
import type { Built } from '../../store.ts';
import { words } from '../../words.ts';
import type { Fitted } from '../fit.ts';
import { placeUnder, pxOf } from '../look.ts';
import { kindOf, next, type Picked, picked, type Ruled, spotOf } from './ruled.ts';

/** How near a place must be to catch, px: for a pointer or the keys, and for a finger. */
const near = 11;
const nearFinger = 24;
/** How far an arrow key moves the cross, px, and how far with Shift. */
const stride = 8;
const fine = 1;
/** How far a pointer may move between down and up and still press one place, px. */
const still = 4;

const arrows: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

const isUpright = (a: Point, b: Point): boolean => Math.abs(b.y - a.y) > Math.abs(b.x - a.x);

/** A mark at a place, whose shape says what it is caught by. */
const Spot = ({ kind, at: { x, y } }: { kind: ReturnType<typeof kindOf>; at: Point }) => {
  switch (kind) {
    case 'end':
      return <path d={`M${x - 5} ${y - 5}h10v10h-10z`} />;
    case 'crossing':
      return <path d={`M${x - 6} ${y - 6}l12 12m0-12l-12 12`} />;
    case 'centre':
      return <path d={`M${x - 6} ${y}a6 6 0 1 0 12 0a6 6 0 1 0 -12 0M${x - 9} ${y}h18M${x} ${y - 9}v18`} />;
    case 'middle':
      return <path d={`M${x} ${y - 6}l6 10h-12z`} />;
    case 'square':
      return <path d={`M${x - 6} ${y - 6}v12h12M${x - 6} ${y}h6v6`} />;
    case 'edge':
      return <path d={`M${x} ${y - 6}l6 6l-6 6l-6-6z`} />;
    case 'free':
      return <path d={`M${x - 7} ${y}h14M${x} ${y - 7}v14`} />;
  }
};

interface Props {
  readonly shown: Fitted;
  readonly box: RefObject<HTMLElement | null>;
  readonly built: Built;
  readonly ruled: Ruled;
  readonly onRuled: (ruled: Ruled) => void;
}

/** The ruler over a drawing: a cross that is caught by what is near, and what is measured. Takes presses and keys of the element that it lies in. */
export const RulerOver = ({ shown, box, built, ruled, onRuled }: Props) => {
  const edges = useMemo(
    () =>
      Object.fromEntries(
        Object.keys(shown.places).map((name) => [
          name,
          edgesOf(views[name as ViewName](built.job, built.design).marks),
        ]),
      ) as Partial<Record<ViewName, readonly Edge[]>>,
    [built, shown.places],
  );

  const place = (px: Point, reach: number): Picked | undefined => {
    const under = placeUnder(shown, px);
    const view = viewUnder(shown.places, under);
    const where = shown.places[view];
    if (where === undefined) return undefined;
    const at = inView(where, under);
    const begun = ruled.to === undefined && ruled.from?.view === view ? spotOf(ruled.from).point : undefined;
    const snaps = snapsNear(edges[view] ?? [], at, { reach: reach / shown.scale, heights: where.heights, from: begun });
    return { view, at, snaps, index: 0 };
  };
  const pxOfPicked = (one: Picked, caught = true): Point | undefined => {
    const where: Place | undefined = shown.places[one.view];
    return where && pxOf(shown, onDrawing(where, caught ? spotOf(one).point : one.at));
  };
  const inBox = (event: PointerEvent): Point => {
    const room = box.current?.getBoundingClientRect();
    return { x: event.clientX - (room?.left ?? 0), y: event.clientY - (room?.top ?? 0) };
  };

  const onPointerMove = useEffectEvent((event: PointerEvent, begun: Picked | undefined) => {
    if (event.pointerType === 'touch') return;
    const aim = place(inBox(event), near);
    // Drawn out from a place that caught the ruler; else a held button moves the drawing.
    if (begun) onRuled({ of: built, from: begun, aim, byKeys: false });
    else if (event.buttons === 0) onRuled({ ...ruled, aim, byKeys: false });
  });
  /** What catches the ruler where a mouse is pressed: it is drawn out from there. */
  const caughtAt = useEffectEvent((event: PointerEvent): Picked | undefined => {
    const one = event.pointerType === 'touch' ? undefined : place(inBox(event), near);
    return one && kindOf(one) !== 'free' ? one : undefined;
  });
  const onDrawnOut = useEffectEvent((event: PointerEvent, begun: Picked) => {
    const to = place(inBox(event), near);
    onRuled(to ? { of: built, from: begun, to } : { of: built, from: begun });
  });
  const onPointerLeave = useEffectEvent(() => onRuled({ ...ruled, aim: undefined }));
  const onPress = useEffectEvent((event: PointerEvent) => {
    const isTouch = event.pointerType === 'touch';
    const px = inBox(event);
    // What is aimed at may be the next of what is near; but a quick hand is past it.
    const at = ruled.aim && pxOfPicked(ruled.aim, false);
    const isAimed = !isTouch && at !== undefined && Math.hypot(at.x - px.x, at.y - px.y) < still;
    const one = isAimed ? ruled.aim : place(px, isTouch ? nearFinger : near);
    if (one) onRuled(picked(isTouch ? { ...ruled, aim: undefined } : ruled, one));
  });
  const onKeyDown = useEffectEvent((event: KeyboardEvent) => {
    if (event.target !== box.current || event.ctrlKey || event.metaKey || event.altKey) return;
    const middle = { x: shown.width / 2, y: shown.height / 2 };
    const arrow = arrows[event.key];
    if (arrow !== undefined) {
      const by = event.shiftKey ? fine : stride;
      const from = (ruled.aim && pxOfPicked(ruled.aim, false)) ?? middle;
      const within = (value: number, most: number) => Math.min(most - 1, Math.max(1, value));
      const to = { x: within(from.x + arrow.x * by, shown.width), y: within(from.y + arrow.y * by, shown.height) };
      onRuled({ ...ruled, aim: place(to, near), byKeys: true });
    } else if (event.key === 'Enter' || event.key === ' ') {
      const one = ruled.aim ?? place(middle, near);
      if (one) onRuled(picked({ ...ruled, aim: one }, one));
    } else if (event.key === 'n' || event.key === 'N') onRuled(next(ruled));
    else if (event.key === 'Escape') onRuled({ of: built });
    else return;
    event.preventDefault();
    event.stopPropagation();
  });

  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    let down:
      | { readonly x: number; readonly y: number; readonly id: number; readonly caught: Picked | undefined }
      | undefined;
    const isStill = ({ clientX, clientY }: PointerEvent, from: { readonly x: number; readonly y: number }) =>
      Math.hypot(clientX - from.x, clientY - from.y) < still;
    const onDown = (event: PointerEvent) => {
      const isOne = event.isPrimary && event.button === 0;
      const caught = isOne ? caughtAt(event) : undefined;
      down = isOne ? { x: event.clientX, y: event.clientY, id: event.pointerId, caught } : undefined;
      // It would move the drawing.
      if (caught) event.stopPropagation();
    };
    const onMove = (event: PointerEvent) =>
      onPointerMove(event, down?.id === event.pointerId && !isStill(event, down) ? down.caught : undefined);
    const onUp = (event: PointerEvent) => {
      const from = down;
      down = undefined;
      if (from?.id !== event.pointerId) return;
      if (isStill(event, from)) onPress(event);
      else if (from.caught) onDrawnOut(event, from.caught);
    };
    const onCancel = () => {
      down = undefined;
    };
    element.addEventListener('pointermove', onMove);
    element.addEventListener('pointerleave', onPointerLeave);
    element.addEventListener('pointerdown', onDown, { capture: true });
    element.addEventListener('pointerup', onUp);
    element.addEventListener('pointercancel', onCancel);
    element.addEventListener('keydown', onKeyDown);
    element.dataset.rules = 'true';
    element.focus({ preventScroll: true });
    return () => {
      element.removeEventListener('pointermove', onMove);
      element.removeEventListener('pointerleave', onPointerLeave);
      element.removeEventListener('pointerdown', onDown, { capture: true });
      element.removeEventListener('pointerup', onUp);
      element.removeEventListener('pointercancel', onCancel);
      element.removeEventListener('keydown', onKeyDown);
      delete element.dataset.rules;
    };
  }, [box]);

  const { from, to, aim } = ruled;
  const second = to ?? (from && aim);
  const [a, b] = [from && pxOfPicked(from), second && pxOfPicked(second)];
  const apart = from && second && measured(spotOf(from), spotOf(second));
  const first = apart && (apart.distance ?? apart.across ?? apart.along ?? apart.height);
  const cross = aim && pxOfPicked(aim);
  return (
    <svg
      className="tool ruler"
      aria-hidden="true"
      width={shown.width}
      height={shown.height}
      viewBox={`0 0 ${shown.width} ${shown.height}`}
    >
      {a && b && <path className="measure" d={`M${a.x} ${a.y}L${b.x} ${b.y}`} />}
      {from && a && <Spot kind={kindOf(from)} at={a} />}
      {to && b && <Spot kind={kindOf(to)} at={b} />}
      {aim && cross && (
        <>
          <Spot kind={kindOf(aim)} at={cross} />
          {kindOf(aim) !== 'free' && (
            <text className="kind" x={cross.x + 12} y={cross.y + 18}>
              {words.measuring.kinds[kindOf(aim)]}
            </text>
          )}
        </>
      )}
      {a && b && first !== undefined && (
        // Beside a line that stands up, over one that lies: clear of what is measured.
        <text
          className="value"
          x={(a.x + b.x) / 2 + (isUpright(a, b) ? 14 : 0)}
          y={(a.y + b.y) / 2 + (isUpright(a, b) ? 5 : -10)}
          textAnchor={isUpright(a, b) ? 'start' : 'middle'}
        >
          {formatQuantity(first, 'length', built.job.show, { unit: true })}
        </text>
      )}
    </svg>
  );
};
