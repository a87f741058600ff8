import { type RefObject, useEffect, useEffectEvent } from 'react';
import type { Point } from '../../../geometry/shape/types.ts';
import type { Fitted } from './fit.ts';
import { closer, type Look, moved, step } from './look.ts';

interface LookingProps {
  readonly look: Look | undefined;
  readonly box: RefObject<HTMLElement | null>;
  /** The drawing as it fits its room, and as it is looked at now. */
  readonly fitted: Fitted;
  readonly shown: Fitted;
  readonly onLook: (look: Look | undefined) => void;
}

/** How far a pointer moves before it drags, px; how far an arrow key moves the drawing. */
const slack = 4;
const nudge = 40;
/** How much closer a wheel comes for each px that it turns. */
const perPx = 0.0025;
/** A wheel's line and page, px. */
const wheelPx = [1, 16, 400] as const;

/** What is taken hold of for itself: the drawing stays where it is. */
const hasItsOwn = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('[role="slider"], [role="button"], button, input, select, a') !== null;

const between = (touches: TouchList, from: DOMRect) => {
  const [a, b] = [touches[0], touches[1]] as [Touch, Touch];
  return {
    middle: { x: (a.clientX + b.clientX) / 2 - from.left, y: (a.clientY + b.clientY) / 2 - from.top },
    apart: Math.max(1, Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY)),
  };
};

/**
 * Looking closer at a drawing and moving it: by the wheel, by dragging, by two fingers, and by keys. The page is never trapped. A wheel turns the page unless Ctrl or ⌘ is held or
 * the drawing has the focus, and turns it again where the drawing can come no closer; one finger scrolls the page, two move the drawing.
 */
export const Looking = ({ box, fitted, shown, look, onLook }: LookingProps) => {
  const zoom = (times: number, px?: Point): boolean => {
    const look = closer(fitted, shown, times, px);
    if (look.scale === shown.scale) return false;
    onLook(look);
    return true;
  };
  const move = (px: Point) => onLook(moved(fitted, shown, px));

  const onWheel = useEffectEvent((event: WheelEvent) => {
    const element = box.current;
    if (element === null) return;
    const isMeant = event.ctrlKey || event.metaKey || element.contains(document.activeElement);
    if (!isMeant) return;
    const { left, top } = element.getBoundingClientRect();
    const turned = event.deltaY * (wheelPx[event.deltaMode] ?? 1);
    // Two fingers on a pad turn it in many small steps.
    const times = Math.exp(
      -Math.max(-200, Math.min(200, turned)) * perPx * (event.ctrlKey && Math.abs(turned) < 30 ? 4 : 1),
    );
    if (zoom(times, { x: event.clientX - left, y: event.clientY - top })) event.preventDefault();
    // The whole page would grow in its place.
    else if (event.ctrlKey) event.preventDefault();
  });

  const onPointerDown = useEffectEvent((event: PointerEvent) => {
    const element = box.current;
    if (element === null || event.pointerType === 'touch' || event.button > 1 || hasItsOwn(event.target)) return;
    const from = { x: event.clientX, y: event.clientY };
    const begun = shown;
    let drags = false;
    const onMove = (now: PointerEvent) => {
      if (now.pointerId !== event.pointerId) return;
      const px = { x: now.clientX - from.x, y: now.clientY - from.y };
      if (!drags && Math.hypot(px.x, px.y) < slack) return;
      drags = true;
      element.dataset.drags = 'true';
      onLook(moved(fitted, begun, px));
    };
    const onEnd = () => {
      delete element.dataset.drags;
      window.removeEventListener('pointermove', onMove);
      window.removeEventListener('pointerup', onEnd);
      window.removeEventListener('pointercancel', onEnd);
    };
    window.addEventListener('pointermove', onMove);
    window.addEventListener('pointerup', onEnd);
    window.addEventListener('pointercancel', onEnd);
  });

  const onTouchStart = useEffectEvent((event: TouchEvent) => {
    const element = box.current;
    if (element === null || event.touches.length !== 2) return;
    const room = element.getBoundingClientRect();
    const start = between(event.touches, room);
    const begun = shown;
    const onMove = (now: TouchEvent) => {
      if (now.touches.length !== 2) return;
      if (now.cancelable) now.preventDefault();
      const { middle, apart } = between(now.touches, room);
      // What lay between the fingers at first stays between them.
      onLook(closer(fitted, begun, apart / start.apart, start.middle, middle));
    };
    const onEnd = () => {
      element.removeEventListener('touchmove', onMove);
      element.removeEventListener('touchend', onEnd);
      element.removeEventListener('touchcancel', onEnd);
    };
    element.addEventListener('touchmove', onMove, { passive: false });
    element.addEventListener('touchend', onEnd);
    element.addEventListener('touchcancel', onEnd);
  });

  const arrows: Readonly<Record<string, Point>> = {
    ArrowLeft: { x: nudge, y: 0 },
    ArrowRight: { x: -nudge, y: 0 },
    ArrowUp: { x: 0, y: nudge },
    ArrowDown: { x: 0, y: -nudge },
  };
  /** The keys that the drawing answers to while it has the focus; arrows scroll the page as long as the drawing is seen whole. */
  const onKeyDown = useEffectEvent((event: KeyboardEvent) => {
    if (event.target !== box.current || event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey)
      return;
    const arrow = arrows[event.key];
    if (event.key === '+' || event.key === '=') zoom(step);
    else if (event.key === '-' || event.key === '−') zoom(1 / step);
    else if (event.key === '0') onLook(undefined);
    else if (arrow !== undefined && look !== undefined) move(arrow);
    else return;
    event.preventDefault();
  });

  useEffect(() => {
    const element = box.current;
    if (element === null) return;
    element.addEventListener('wheel', onWheel, { passive: false });
    element.addEventListener('pointerdown', onPointerDown);
    element.addEventListener('keydown', onKeyDown);
    element.addEventListener('touchstart', onTouchStart, { passive: true });
    return () => {
      element.removeEventListener('wheel', onWheel);
      element.removeEventListener('pointerdown', onPointerDown);
      element.removeEventListener('keydown', onKeyDown);
      element.removeEventListener('touchstart', onTouchStart);
    };
  }, [box]);

  return null;
};
