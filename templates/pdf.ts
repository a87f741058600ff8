import { PDFDocument, PDFName, type PDFPage, PrintScaling } from '@cantoo/pdf-lib';
import type { Primitive, Purpose } from '../geometry/drawing.ts';
import { type Correction, uncorrected } from './correction.ts';
import { type PdfFont, pdfFont } from './pdf-font.ts';
import { pictures } from './pdf-image.ts';
import { strokeOperators } from './pdf-path.ts';
import { addLayers, addOutline } from './pdf-structure.ts';
import { type Pen, textOperators } from './pdf-text.ts';
import { type Face, readFace, type SetLine, setLine } from './set-line.ts';
import { purposes } from './style.ts';
import { type DrawText, pictureDpi } from './text-picture.ts';

/** One page: its size and its drawing in mm, x right and y down from the left top corner. */
export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly primitives: readonly Primitive[];
  readonly title: string;
  /** Its lines in the file's outline; its title where this is left out. */
  readonly bookmarks?: readonly string[];
  /** What the drawing is stretched by about the page's middle, to make up for what the printer does to it; as it is where this is left out. */
  readonly correction?: Correction;
}

export interface PdfOptions {
  readonly title: string;
  readonly author?: string;
  readonly subject?: string;
  readonly keywords?: readonly string[];
  /** When the file says that it was made: the same input with the same date gives the same bytes. */
  readonly date: Date;
  /**
   * DejaVu Sans as TrueType files, and a font for what it lacks (TrueType or OpenType), from which only the glyphs used are embedded.
   */
  readonly fonts: { readonly regular: Uint8Array; readonly bold: Uint8Array; readonly other?: Uint8Array | undefined };
  /** Draws what no font has. */
  readonly drawText?: DrawText;
  /** Hears of each page, from 1, before it is written. */
  readonly tell?: (page: number) => void;
  /** Hears which characters nothing could draw, each once; they stand as their codes. Not called where there is none. */
  readonly tellLacking?: (characters: readonly string[]) => void;
}

/** A point of PDF user space is 1/72 in (ISO 32000-1, 8.3.2.3), an inch 25.4 mm. */
const pointsPerMm = 72 / 25.4;

const purposeOf = (primitive: Primitive): Purpose => (primitive.kind === 'stroke' ? primitive.purpose : 'show');

/** A name for a font within the file, from what it calls itself, under a subset's tag (ISO 32000-1, 9.6.4). */
const fontName = (tag: string, { font }: Face): string =>
  `${tag}+${(font.postscriptName ?? '').replace(/[^A-Za-z0-9-]/g, '').slice(0, 60) || 'Font'}`;

/** What the file's texts are set and written with. */
const penOf = (file: PDFDocument, pages: readonly PdfPage[], { fonts, drawText }: PdfOptions) => {
  const [regular, bold] = [readFace(fonts.regular), readFace(fonts.bold)];
  const other = fonts.other && readFace(fonts.other);
  const embedded = new Map<Face, PdfFont>([
    [regular, pdfFont(file, regular, 'Regular', fontName('SAGITA', regular))],
    [bold, pdfFont(file, bold, 'Bold', fontName('SAGITB', bold))],
    ...(other ? [[other, pdfFont(file, other, 'Other', fontName('SAGITC', other))] as const] : []),
  ]);
  const sizes = pages.flatMap(({ primitives }) => primitives.map((p) => (p.kind === 'text' ? p.size : 0)));
  const largest = sizes.reduce((most, size) => Math.max(most, size), 1);
  const images = pictures(file, drawText, Math.ceil((largest / 25.4) * pictureDpi));
  // The same words stand on many sheets, and setting them takes its time.
  const known = { regular: new Map<string, SetLine>(), bold: new Map<string, SetLine>() };
  const set = (text: string, isBold: boolean): SetLine => {
    const lines = isBold ? known.bold : known.regular;
    const before = lines.get(text);
    if (before) return before;
    const line = setLine(text, isBold, {
      faces: [isBold ? bold : regular, ...(other ? [other] : [])],
      picture: images && ((words, toLeft) => images.draw(words, isBold, toLeft)),
    });
    lines.set(text, line);
    return line;
  };
  const pen: Pen = {
    set,
    fontOf: (face) => embedded.get(face) as PdfFont,
    imageOf: (picture) => images?.nameOf(picture) ?? '',
  };
  return {
    pen,
    fonts: [...embedded.values()],
    images,
    lacking: () => [...new Set([...known.regular.values(), ...known.bold.values()].flatMap((line) => line.lacking))],
  };
};

/** The page's operators: one matrix that makes the unit a mm and y run down, and a stretch of marked content for each layer. */
const content = (page: PdfPage, pen: Pen): string => {
  const { across, down } = page.correction ?? uncorrected;
  const [x, y] = [across * pointsPerMm, down * pointsPerMm];
  const left = (page.width * (pointsPerMm - x)) / 2;
  const flip = [x, 0, 0, -y, left, (page.height * (pointsPerMm + y)) / 2];
  const layers = purposes.map((purpose) => {
    const drawn = page.primitives
      .filter((primitive) => purposeOf(primitive) === purpose)
      .map((p) => (p.kind === 'stroke' ? strokeOperators(p) : textOperators(p, pen)));
    return drawn.length === 0 ? '' : `/OC /${purpose} BDC\n${drawn.join('')}EMC\n`;
  });
  // The matrix keeps twelve decimals: at six it would be off by 0.0001 mm on a long sheet.
  return `q\n${flip.map((n) => String(Number(n.toFixed(12)))).join(' ')} cm\n0 G 0 g 4 M\n${layers.join('')}Q\n`;
};

/**
 * Pages as a PDF file at true size, viewers told not to scale it when printing (ISO 32000-1, 12.2), a layer for each purpose.
 * Throws RangeError when there is no page.
 */
export const toPdf = async (pages: readonly PdfPage[], options: PdfOptions): Promise<Uint8Array> => {
  if (pages.length === 0) throw new RangeError('A PDF file has at least one page; none was given.');
  const file = await PDFDocument.create({ updateMetadata: false });
  file.setTitle(options.title, { showInWindowTitleBar: true });
  if (options.author !== undefined) file.setAuthor(options.author);
  if (options.subject !== undefined) file.setSubject(options.subject);
  if (options.keywords !== undefined) file.setKeywords([...options.keywords]);
  file.setCreator('Sagitta');
  file.setProducer('Sagitta');
  file.setCreationDate(options.date);
  file.setModificationDate(options.date);
  file.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None);
  const layers = addLayers(file);

  const { pen, fonts, images, lacking } = penOf(file, pages, options);
  const written = pages.map((page, n) => {
    options.tell?.(n + 1);
    return content(page, pen);
  });
  // A face that nothing is written with is not embedded.
  const used = fonts.filter((font) => font.isUsed());
  for (const font of used) font.embed();
  const added = pages.map((page, n) => {
    const sheet = file.addPage([page.width * pointsPerMm, page.height * pointsPerMm]);
    sheet.setCropBox(0, 0, page.width * pointsPerMm, page.height * pointsPerMm);
    for (const { name, ref } of used) sheet.node.setFontDictionary(PDFName.of(name), ref);
    for (const { name, ref } of images?.used() ?? []) sheet.node.setXObject(PDFName.of(name), ref);
    sheet.node.Resources()?.set(PDFName.of('Properties'), file.context.obj(layers));
    sheet.node.addContentStream(file.context.register(file.context.flateStream(written[n] ?? '')));
    return sheet;
  });
  addOutline(
    file,
    pages.flatMap((page, n) => (page.bookmarks ?? [page.title]).map((title) => ({ title, page: added[n] as PDFPage }))),
  );
  const unseen = lacking();
  if (unseen.length > 0) options.tellLacking?.(unseen);
  return file.save({ addDefaultPage: false });
};
