import qrcode from 'qrcode-generator';

/** The most bytes that a QR code holds: version 40, error correction L (ISO/IEC 18004). */
export const mostBytes = 2953;
/** White around it, in modules (ISO/IEC 18004: four). */
const quiet = 4;

/** A QR code as a drawing: its dark modules as SVG path data, one unit a module, in a square of so many. */
export interface QrDrawing {
  readonly d: string;
  readonly side: number;
}

/** A text of ASCII letters, such as an address, as a QR code with the least error correction; undefined where it is too long for one. */
export const qrOf = (text: string): QrDrawing | undefined => {
  if (text.length > mostBytes) return undefined;
  const code = qrcode(0, 'L');
  code.addData(text, 'Byte');
  code.make();
  const count = code.getModuleCount();
  const rows = Array.from({ length: count }, (_, row) => row);
  const d = rows
    .flatMap((row) =>
      rows.filter((column) => code.isDark(row, column)).map((column) => `M${column + quiet} ${row + quiet}h1v1h-1z`),
    )
    .join('');
  return { d, side: count + 2 * quiet };
};
