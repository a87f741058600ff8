import type { DrawText } from '../../../templates/text-picture.ts';

/** As the PDF's own fonts first, then whatever the browser has. */
const fontAt = (px: number, bold: boolean): string => `${bold ? 'bold ' : ''}${px}px "DejaVu Sans", sans-serif`;

/** A code point that is no character and never will be (Unicode 16, 23.7): it looks as what no font has. */
const noCharacter = '\u{10ffff}';
const probeSize = 24;

/** Draws text with the browser's own fonts; undefined where the browser cannot draw out of sight. */
export const textDrawer = (): DrawText | undefined => {
  if (typeof OffscreenCanvas === 'undefined') return undefined;
  const canvas = new OffscreenCanvas(1, 1);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) return undefined;

  const draw: DrawText = (text, { bold, toLeft, perEm }) => {
    const set = () => {
      context.font = fontAt(perEm, bold);
      context.direction = toLeft ? 'rtl' : 'ltr';
      context.textAlign = 'left';
    };
    set();
    const size = context.measureText(text);
    // A pixel more at each side, for what is blurred over an edge.
    const left = Math.floor(-size.actualBoundingBoxLeft) - 1;
    const above = Math.ceil(size.actualBoundingBoxAscent) + 1;
    const width = Math.max(1, Math.ceil(size.actualBoundingBoxRight) + 1 - left);
    const height = Math.max(1, Math.ceil(size.actualBoundingBoxDescent) + 1 + above);
    canvas.width = width;
    canvas.height = height;
    set();
    context.fillText(text, -left, above);
    const rgba = new Uint8Array(context.getImageData(0, 0, width, height).data.buffer);
    return { rgba, width, height, left, above, advance: size.width, perEm };
  };

  const looks = (character: string): string => {
    const picture = draw(character, { bold: false, toLeft: false, perEm: probeSize });
    return `${picture?.width} ${picture?.height} ${picture?.rgba.join()}`;
  };
  const missing = looks(noCharacter);
  const known = new Map<string, boolean>();
  /** Whether the browser has a font for a character: without one it draws what it draws for none. */
  const has = (character: string): boolean => {
    const before = known.get(character);
    if (before !== undefined) return before;
    const found =
      /^[\p{M}\p{Default_Ignorable_Code_Point}\p{White_Space}]$/u.test(character) || looks(character) !== missing;
    known.set(character, found);
    return found;
  };
  return (text, how) => ([...text].every(has) ? draw(text, how) : undefined);
};
