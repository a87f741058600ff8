/** A stretch of text drawn in pixels, for letters that no font at hand has. */
export interface TextPicture {
  /** Its pixels from left to right and top to bottom, four bytes each: red, green, blue and how opaque it is. */
  readonly rgba: Uint8Array;
  readonly width: number;
  readonly height: number;
  /** From the beginning of the baseline to the left edge, + to the right; from the top edge down to the baseline; and the text's advance, px. */
  readonly left: number;
  readonly above: number;
  readonly advance: number;
  /** Pixels an em. */
  readonly perEm: number;
}

/** Draws a stretch of text that runs one way, black, at so many pixels an em; undefined where it has no letters for it either. */
export type DrawText = (
  text: string,
  how: { readonly bold: boolean; readonly toLeft: boolean; readonly perEm: number },
) => TextPicture | undefined;

/** How finely text is drawn, dots an inch. */
export const pictureDpi = 600;
