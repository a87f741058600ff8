/** The drawer with the numbers, and the button that opens it. */
export const drawerId = 'drawer';
export const openerId = 'drawer-opener';
