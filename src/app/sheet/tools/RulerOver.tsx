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

  const onPointerMove = useEffectEvent((event: PointerEvent) => {
    if (event.pointerType === 'touch' || event.buttons !== 0) return;
    onRuled({ ...ruled, aim: place(inBox(event), near), byKeys: false });
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
    let down: { readonly x: number; readonly y: number; readonly id: number } | undefined;
    const onDown = (event: PointerEvent) => {
      const isOne = event.isPrimary && event.button === 0;
      down = isOne ? { x: event.clientX, y: event.clientY, id: event.pointerId } : undefined;
    };
    const onUp = (event: PointerEvent) => {
      const from = down;
      down = undefined;
      if (from?.id === event.pointerId && Math.hypot(event.clientX - from.x, event.clientY - from.y) < still)
        onPress(event);
    };
    const onCancel = () => {
      down = undefined;
    };
    element.addEventListener('pointermove', onPointerMove);
    element.addEventListener('pointerleave', onPointerLeave);
    element.addEventListener('pointerdown', onDown);
    element.addEventListener('pointerup', onUp);
    element.addEventListener('pointercancel', onCancel);
    element.addEventListener('keydown', onKeyDown);
    element.dataset.rules = 'true';
    element.focus({ preventScroll: true });
    return () => {
      element.removeEventListener('pointermove', onPointerMove);
      element.removeEventListener('pointerleave', onPointerLeave);
      element.removeEventListener('pointerdown', onDown);
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
