/** The part of fontkit that is used here; the package brings no types of its own. */
declare module 'fontkit' {
  interface GlyphPath {
    readonly commands: readonly { readonly command: string; readonly args: readonly number[] }[];
  }
  interface FontGlyph {
    readonly id: number;
    /** In font units, y up. */
    readonly path: GlyphPath;
    readonly codePoints: number[];
    readonly advanceWidth: number;
  }
  interface FontSubset {
    /** Set in a subset whose outlines are in the Compact Font Format. */
    readonly cff?: unknown;
    includeGlyph(glyph: number | FontGlyph): number;
    encode(): Uint8Array;
  }
  interface FontFace {
    readonly postscriptName: string | null;
    readonly unitsPerEm: number;
    readonly ascent: number;
    readonly descent: number;
    readonly italicAngle: number;
    readonly capHeight: number;
    readonly xHeight: number;
    readonly bbox: { minX: number; minY: number; maxX: number; maxY: number; width: number; height: number };
    readonly characterSet: number[];
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): FontGlyph;
    layout(
      text: string,
      features?: Record<string, boolean> | string[],
      script?: string,
      language?: string,
      direction?: 'ltr' | 'rtl',
    ): {
      glyphs: FontGlyph[];
      positions: { readonly xAdvance: number; readonly xOffset: number; readonly yOffset: number }[];
    };
    createSubset(): FontSubset;
  }
  interface FontCollection {
    readonly fonts: FontFace[];
  }
  export function create(data: Uint8Array): FontFace | FontCollection;
}
