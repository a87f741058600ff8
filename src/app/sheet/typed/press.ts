import type { MouseEvent } from 'react';

/** How far a place in the window lies from an element's box, px; 0 within it. */
const away = (element: Element, x: number, y: number): number => {
  const { left, right, top, bottom } = element.getBoundingClientRect();
  return Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));
};

/** The number that stands nearest to a place in the window, of those that can be typed or asked, and how far off, px: for a finger the room of several lies over each other. */
export const nearestSpot = (
  svg: SVGSVGElement | null,
  x: number,
  y: number,
): { readonly spot: Element; readonly away: number } | undefined =>
  [...(svg?.querySelectorAll<SVGElement>('.spot') ?? [])].reduce<{ spot: Element; away: number } | undefined>(
    (best, spot) => {
      const text = svg?.querySelector(`text[data-mark="${CSS.escape(spot.dataset.of ?? '')}"]`);
      const far = text ? away(text, x, y) : Number.POSITIVE_INFINITY;
      return best === undefined || far < best.away ? { spot, away: far } : best;
    },
    undefined,
  );

/** What a press of a number does: its own, or that of the one which was meant. A press by key or by voice has no place. */
export const pressed = (own: () => void) => (event: MouseEvent<SVGElement>) => {
  const { currentTarget, clientX, clientY, detail } = event;
  const meant = detail === 0 ? undefined : nearestSpot(currentTarget.ownerSVGElement, clientX, clientY)?.spot;
  if (meant === undefined || meant === currentTarget) return own();
  press(meant);
};

/** Presses a number as a key would. */
export const press = (spot: Element): void => {
  spot.dispatchEvent(new window.MouseEvent('click', { bubbles: true }));
};
