import { type KeyboardEvent, memo, type PointerEvent, useEffect, useRef } from 'react';
import { type FieldInfo, fieldAt, getAt } from '../../../../geometry/fields.ts';
import type { Problem } from '../../../../geometry/problem.ts';
import type { Point } from '../../../../geometry/shape/types.ts';
import type { Grip, Pull } from '../../../../geometry/views/grips/index.ts';
import { jobAsRead } from '../../decimal.ts';
import { coarse } from '../../media.ts';
import type { PathValue } from '../../store.ts';
import { fieldTitle } from '../../strings.ts';
import { swiftOf } from '../../swift/hand.ts';
import { useBench, useBenchState } from '../../use-bench.ts';
import { useMedia } from '../../use-media.ts';
import { words } from '../../words.ts';
import { nearestSpot, press } from '../typed/press.ts';
import { asFarAs } from './as-far-as.ts';
import { geared, isGeared } from './geared.ts';
import { alongAxis, numberOf, pullsOf, saidOf, standsAt } from './on-drawing.ts';
import { type Stride, snapped, startOf, stepped, stopped } from './step.ts';

/** A hand that trembles has not dragged yet, px. */
const still = 3;

/** The handle whose middle is nearest to a place in the window: for a finger they may lie over each other. */
const nearest = (handles: Iterable<Element>, x: number, y: number): Element | undefined => {
  const away = (handle: Element): number => {
    const { left, right, top, bottom } = (handle.querySelector('.reach') ?? handle).getBoundingClientRect();
    return Math.hypot((left + right) / 2 - x, (top + bottom) / 2 - y);
  };
  return [...handles].reduce<Element | undefined>(
    (best, one) => (best === undefined || away(one) < away(best) ? one : best),
    undefined,
  );
};

/** A number of a grip, and where it is dragged or stepped to. */
interface Pulled {
  readonly field: FieldInfo;
  readonly value: number;
}

/** What is put in for values, stopped at their fields' limits. */
const inLimits = (values: readonly Pulled[]): readonly PathValue[] =>
  values.map(({ field, value }) => ({ path: field.path, value: stopped(field, value) }));

/** A drag under way: the grip as it was taken hold of, where the pointer was, and px per mm. */
interface Drag {
  readonly grip: Grip;
  readonly from: Point;
  readonly scale: Point;
  /** Where it was drawn last. */
  reached: Point;
  /** What was in the way, by the values that were not taken. */
  readonly refused: Map<string, Problem>;
  isMoving: boolean;
  frame: number | undefined;
  /** Heeds no other finger any more. */
  readonly alone: () => void;
  to: Point;
  isFree: boolean;
}

interface HandleProps {
  /** Where it stands and what it holds; another one with the same place and number is no reason for a new rendering. */
  readonly grip: Grip;
  /** The grip with this id as it is now. */
  readonly latest: (id: string) => Grip | undefined;
  /** Px per mm of the drawing. */
  readonly scale: number;
  /** It is pointed at, in focus or held; `stoppedAt` names what may not be gone past. */
  readonly onActive: (id: string, isActive: boolean, isStopped?: boolean) => void;
  /** It begins to be dragged. */
  readonly onHold: (id: string) => void;
  readonly onType: (id: string) => void;
}

/** Whether two grips stand at the same place and hold the same numbers. */
const isAlike = (a: Grip, b: Grip): boolean =>
  a.id === b.id &&
  a.jobPath === b.jobPath &&
  a.at.x === b.at.x &&
  a.at.y === b.at.y &&
  a.axis?.x === b.axis?.x &&
  a.axis?.y === b.axis?.y &&
  a.also?.jobPath === b.also?.jobPath &&
  a.isTwin === b.isTwin;

const isSameHandle = ({ grip: a, ...before }: HandleProps, { grip: b, ...now }: HandleProps): boolean =>
  isAlike(a, b) && (Object.keys(now) as (keyof typeof now)[]).every((key) => before[key] === now[key]);

/** The picture of a handle, px: a bar with an arrowhead at either end, along the way that it goes; a cross of two where it goes anywhere. */
const bar = 'M-12,0 L-6.5,-3.2 V-0.7 H6.5 V-3.2 L12,0 L6.5,3.2 V0.7 H-6.5 V3.2 Z';

/** One number taken hold of on the drawing: dragged, or gone to with the arrow keys. */
export const Handle = memo(
  ({ grip: drawn, latest, scale, onActive: tellActive, onHold: tellHold, onType: tellType }: HandleProps) => {
    const bench = useBench();
    const swift = swiftOf(bench);
    const isCoarse = useMedia(coarse);
    const drag = useRef<Drag | undefined>(undefined);
    const { id, jobPath, at, axis, also } = drawn;
    const now = () => latest(id) ?? drawn;
    const onActive = (isActive: boolean, isStopped?: boolean) => tellActive(id, isActive, isStopped);
    const name = useBenchState(({ job }) =>
      also ? fieldTitle(job, jobPath).split(', ').slice(1).join(', ') : fieldTitle(job, jobPath),
    );
    const said = useBenchState((state) => saidOf(drawn, jobAsRead(state)));
    const isLit = useBenchState(({ pointed, focus }) => [jobPath, also?.jobPath].includes(pointed ?? focus ?? ''));
    const first = fieldAt(jobPath);
    const value = useBenchState(({ job }) => numberOf(drawn, job));

    /** Puts values in, stopped at their fields' limits; gives what is in the way where they cannot be built. */
    const put = (values: readonly Pulled[], refused?: Map<string, Problem>): Problem | undefined => {
      const held = inLimits(values);
      onActive(
        true,
        values.some(({ value }, k) => held[k]?.value !== value),
      );
      const key = held.map(({ value }) => value).join();
      const known = refused?.get(key);
      if (known !== undefined) return known;
      const problem = bench.drag(jobPath, held, name);
      if (problem !== undefined) refused?.set(key, problem);
      return problem;
    };

    /** Where a hand drags its grip to. */
    const under = ({ grip, from, to, scale: { x, y } }: Drag): Point => ({
      x: grip.at.x + (to.x - from.x) / x,
      y: grip.at.y + (to.y - from.y) / y,
    });
    /** What its numbers are where a hand has dragged it there. */
    const valuesAt = ({ grip, isFree, scale }: Drag, at: Point): readonly Pulled[] =>
      pullsOf(grip).map(({ field, value }) => {
        const { show } = bench.getState().job;
        const free = isGeared(grip) ? geared(grip, at, scale.y, show) : value(at);
        return { field, value: isFree ? free : snapped(field, free, show) };
      });

    /** Follows the hand with the bench, and with the whole page. */
    const followWhole = () => {
      const hand = drag.current;
      if (hand === undefined) return;
      const problem = asFarAs(hand.reached, under(hand), (at) => {
        const here = put(valuesAt(hand, at), hand.refused);
        if (here === undefined) hand.reached = at;
        return here;
      });
      bench.bar(jobPath, problem);
    };

    const follow = () => {
      const hand = drag.current;
      if (hand === undefined) return;
      hand.frame = undefined;
      const to = under(hand);
      const pulled = valuesAt(hand, to);
      const values = inLimits(pulled);
      const isStopped = values.some(({ value }, k) => pulled[k]?.value !== value);
      const onDrawn = () => {
        hand.reached = to;
      };
      const step = { grip: id, isFinger: isCoarse, values, really: followWhole, onDrawn };
      if (isStopped) swift.end();
      if (isStopped || !swift.follow(step)) followWhole();
    };

    // A finger on a grip drags it; beside it the page is scrolled. Browsers do not heed `touch-action` inside an SVG.
    const handle = useRef<SVGGElement>(null);
    useEffect(() => {
      const element = handle.current;
      const onTouch = (event: TouchEvent) => {
        if (event.touches.length === 1) event.preventDefault();
      };
      element?.addEventListener('touchstart', onTouch, { passive: false });
      return () => element?.removeEventListener('touchstart', onTouch);
    }, []);

    // Its place may go while it is held: the number stays as it was dragged.
    useEffect(
      () => () => {
        drag.current?.alone();
        if (drag.current) swift.end();
        if (drag.current?.isMoving) bench.letGo();
      },
      [bench, swift],
    );

    const onPointerDown = (event: PointerEvent<SVGGElement>) => {
      const { currentTarget: element, pointerId, isPrimary, clientX: x, clientY: y } = event;
      const svg = element.ownerSVGElement;
      const matrix = svg?.getScreenCTM();
      if (event.button !== 0 || !isPrimary || !matrix || drag.current) return;
      event.preventDefault();
      const meant = nearest(svg?.querySelectorAll('.grip') ?? [], x, y);
      // It lay on top, but another one's middle is nearer to the hand.
      if (meant !== undefined && meant !== element) {
        meant.dispatchEvent(new window.PointerEvent('pointerdown', event.nativeEvent));
        return;
      }
      swift.ready();
      element.setPointerCapture(pointerId);
      element.focus({ preventScroll: true });
      const start = { x, y };
      // A second finger moves the drawing: what was dragged goes back.
      const onOther = (other: globalThis.PointerEvent) => {
        if (other.pointerId !== pointerId) letGo(false);
      };
      window.addEventListener('pointerdown', onOther, true);
      drag.current = {
        alone: () => window.removeEventListener('pointerdown', onOther, true),
        grip: now(),
        reached: now().at,
        refused: new Map(),
        from: start,
        to: start,
        scale: { x: matrix.a, y: matrix.d },
        isMoving: false,
        isFree: false,
        frame: undefined,
      };
    };

    const onPointerMove = ({ clientX: x, clientY: y, altKey, shiftKey }: PointerEvent) => {
      const hand = drag.current;
      if (hand === undefined) return;
      hand.to = { x, y };
      hand.isFree = altKey || shiftKey;
      if (!hand.isMoving) {
        if (Math.hypot(x - hand.from.x, y - hand.from.y) < still) return;
        hand.isMoving = true;
        tellHold(id);
        bench.hold(jobPath);
      }
      // Once a frame, however often the pointer tells.
      hand.frame ??= requestAnimationFrame(follow);
    };

    /** Lets go: what was dragged last counts, unless it is put back. */
    const letGo = (isKept: boolean) => {
      const hand = drag.current;
      if (hand === undefined) return;
      hand.alone();
      if (hand.frame !== undefined) cancelAnimationFrame(hand.frame);
      swift.end();
      if (hand.isMoving && isKept) followWhole();
      drag.current = undefined;
      if (!isKept) bench.forget(jobPath);
      else if (hand.isMoving) bench.letGo();
    };

    /** A single number grows to the right and upwards, as sliders do; a point goes where the arrow shows. */
    const wayOf = (key: string, pull: Pull): 1 | -1 => {
      if (!also) return ['ArrowRight', 'ArrowUp', 'PageUp'].includes(key) ? 1 : -1;
      const stands = now().at;
      const onPage = ['ArrowRight', 'ArrowDown', 'PageDown'].includes(key);
      return pull.value({ x: stands.x + 1, y: stands.y + 1 }) > pull.value(stands) === onPage ? 1 : -1;
    };

    /** Pressed without being dragged, it lay over a number that was meant. */
    const onPointerUp = ({ currentTarget, clientX: x, clientY: y }: PointerEvent<SVGGElement>) => {
      const isPress = drag.current?.isMoving === false;
      letGo(true);
      const meant = isPress ? nearestSpot(currentTarget.ownerSVGElement, x, y) : undefined;
      if (meant?.away === 0) press(meant.spot);
    };

    const onKeyDown = (event: KeyboardEvent<SVGGElement>) => {
      const { key, shiftKey, altKey } = event;
      if (event.ctrlKey || event.metaKey) return;
      if (key === 'Escape') {
        event.preventDefault();
        if (drag.current) letGo(false);
        else bench.forget(jobPath);
        return onActive(true, false);
      }
      if (key === 'Enter' || key === ' ') {
        event.preventDefault();
        return tellType(id);
      }
      const isAcross = key === 'ArrowRight' || key === 'ArrowLeft';
      if (drag.current || !(isAcross || ['ArrowUp', 'ArrowDown', 'PageUp', 'PageDown'].includes(key))) return;
      event.preventDefault();
      const pulls = pullsOf(now());
      const pull = also && !isAcross ? pulls[1] : pulls[0];
      const { job: typed } = bench.getState();
      const stand = ({ jobPath: path, value: valueAt, field }: (typeof pulls)[number]): number => {
        const there = getAt(typed, path);
        return typeof there === 'number' ? there : startOf(field, valueAt(now().at));
      };
      const stride: Stride = shiftKey || key.startsWith('Page') ? 'large' : altKey ? 'fine' : 'usual';
      const way = pull && wayOf(key, pull);
      const values = pulls.map((one) => {
        const value = stand(one);
        return {
          field: one.field,
          value: one === pull && way ? stepped(one.field, value, way, stride, typed.show) : value,
        };
      });
      bench.bar(jobPath, put(values));
    };

    return (
      <g
        ref={handle}
        className={isLit ? 'grip lit' : 'grip'}
        data-grip={id}
        role="slider"
        tabIndex={drawn.isTwin ? -1 : 0}
        aria-label={drawn.isTwin ? words.hands.otherSide(name) : words.hands.onDrawing(name)}
        aria-valuemin={first?.min}
        aria-valuemax={first?.max}
        aria-valuenow={value}
        aria-valuetext={said}
        aria-roledescription={also ? words.hands.point : undefined}
        transform={standsAt(at, scale)}
        onPointerDown={onPointerDown}
        onPointerMove={onPointerMove}
        onPointerUp={onPointerUp}
        onPointerCancel={() => letGo(false)}
        onLostPointerCapture={() => letGo(true)}
        onPointerEnter={({ pointerType }) => {
          if (pointerType !== 'mouse') return;
          swift.ready();
          bench.point(jobPath);
          onActive(true);
        }}
        onPointerLeave={() => {
          if (drag.current) return;
          bench.point(undefined);
          onActive(false);
        }}
        onKeyDown={onKeyDown}
        onFocus={() => {
          bench.enter(jobPath);
          onActive(true);
        }}
        onBlur={() => {
          letGo(true);
          bench.leave(jobPath);
          onActive(false);
        }}
      >
        <title>{words.hands.keys}</title>
        <circle className="reach" r={12.5} />
        <path className="handle" d={bar} transform={alongAxis(axis)} />
        {axis === undefined && <path className="handle" d={bar} transform="rotate(90)" />}
      </g>
    );
  },
  isSameHandle,
);
