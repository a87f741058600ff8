/** ISO/IEC 7810, ID-1: a bank card, mm. Its corners are rounded by 3.18 [memory]. */
export const card = { width: 85.6, height: 53.98, corner: 3.18 } as const;

/** How large a CSS px is on this screen, as it was measured, and at which ratio of the device's pixels to it: another zoom of the browser or another screen has another. */
export interface Screen {
  readonly pxPerMm: number;
  readonly ratio: number;
}

/** Px per mm that a screen may have: a projector's 1, and twice the finest phone's. */
export const [leastPx, mostPx] = [1, 20] as const;

/** The reference px of CSS is 1/96 in [W3C, CSS Values and Units 3, 5.2], which many a screen is near. */
export const referencePx = 96 / 25.4;

/** A measured screen from what was kept; undefined where it is none, or was measured at another ratio. */
export const readScreen = (text: string | null, ratio: number): Screen | undefined => {
  try {
    const kept: unknown = JSON.parse(text ?? 'null');
    if (typeof kept !== 'object' || kept === null) return undefined;
    const { pxPerMm, ratio: at } = kept as Partial<Record<keyof Screen, unknown>>;
    if (typeof pxPerMm !== 'number' || !(pxPerMm >= leastPx && pxPerMm <= mostPx)) return undefined;
    return at === ratio ? { pxPerMm, ratio } : undefined;
  } catch {
    return undefined;
  }
};

/** Px per mm from a text that says how many px 100 mm take; undefined where it says none within what a screen may have. */
export const readTyped = (text: string): number | undefined => {
  const value = /^\s*\d+([.,]\d+)?\s*$/.test(text) ? Number(text.trim().replace(',', '.')) / 100 : Number.NaN;
  return value >= leastPx && value <= mostPx ? value : undefined;
};
