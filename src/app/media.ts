/** Wide and high enough for the columns to stand side by side, each scrolled by itself. */
export const roomy = '(min-width: 1360px) and (min-height: 840px)';
/** Large enough for the three views on one sheet; else they are shown one at a time. */
export const three = '(min-width: 1080px) and (min-height: 700px), (min-width: 820px) and (min-height: 960px)';
/** Too narrow for the numbers beside the sheet: they lie in a drawer. */
export const drawer = '(max-width: 1079.98px)';
/** Too narrow, or too low, for the files' buttons beside each other. */
export const narrow = '(max-width: 819.98px), (max-width: 1079.98px) and (max-height: 499.98px)';
/** Worked with a finger. */
export const coarse = '(pointer: coarse)';

/** Whether the window answers to a media query now; false where none can be asked. */
export const answersTo = (query: string): boolean =>
  typeof window.matchMedia === 'function' && window.matchMedia(query).matches;
