import type { Room } from './fit.ts';

/** Text height in a drawing, px: at arm's length, and where there is less room. */
const large = 13.5;
const small = 13;

export const textHeight = (isRoomy: boolean): number => (isRoomy ? large : small);

/** The height of the part of the window that is seen, CSS px: an on-screen keyboard and a zoom leave less of it. */
export const seenHeight = (): number => Math.round(window.visualViewport?.height ?? window.innerHeight);

/** The room of a drawing on a paper of so many px: all of it where columns stand side by side, else as much of the window as leaves the rest of the page its part. */
export const roomOn = (
  paper: { readonly width: number; readonly height: number },
  isRoomy: boolean,
  seen: number,
): Room => ({
  width: paper.width,
  height: isRoomy ? paper.height : Math.max(Math.round(seen * 0.56), Math.min(seen - 150, 260)),
});
