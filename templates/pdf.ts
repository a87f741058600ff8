/// <reference path="./fontkit.d.ts" />
import { PDFDocument, PDFName, PrintScaling } from '@cantoo/pdf-lib';
import * as fontkit from 'fontkit';
import type { Primitive, Purpose } from '../geometry/drawing.ts';
import { type Correction, uncorrected } from './correction.ts';
import { strokeOperators } from './pdf-path.ts';
import { addLayers, addOutline } from './pdf-structure.ts';
import { type Face, textOperators } from './pdf-text.ts';
import { purposes } from './style.ts';

/** One page: its size and its drawing in mm, x right and y down from the left top corner. */
export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly primitives: readonly Primitive[];
  /** Its line in the file's outline. */
  readonly title: string;
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
  /** DejaVu Sans as TrueType files, from which only the characters used are embedded. */
  readonly fonts: { readonly regular: Uint8Array; readonly bold: Uint8Array };
  /** Hears of each page, from 1, before it is written. */
  readonly tell?: (page: number) => void;
}

/** A point of PDF user space is 1/72 in (ISO 32000-1, 8.3.2.3), an inch 25.4 mm. */
const pointsPerMm = 72 / 25.4;

/** Neither kerned nor joined: as text is measured, and as the screen and SVG show it. */
const features = { kern: false, liga: false, clig: false, dlig: false, calt: false };

const isBold = (primitive: Primitive): boolean => primitive.kind === 'text' && primitive.bold;
const isRegular = (primitive: Primitive): boolean => primitive.kind === 'text' && !primitive.bold;
const purposeOf = (primitive: Primitive): Purpose => (primitive.kind === 'stroke' ? primitive.purpose : 'show');

const embed = async (file: PDFDocument, name: string, customName: string, data: Uint8Array): Promise<Face> => {
  const font = await file.embedFont(data, { subset: true, customName, features });
  return { name, font, characters: new Set(font.getCharacterSet()), known: new Map() };
};

/** The page's operators: one matrix that makes the unit a mm and y run down, and a stretch of marked content for each layer. */
const content = (page: PdfPage, faceOf: (bold: boolean) => Face): string => {
  const { across, down } = page.correction ?? uncorrected;
  const [x, y] = [across * pointsPerMm, down * pointsPerMm];
  const left = (page.width * (pointsPerMm - x)) / 2;
  const flip = [x, 0, 0, -y, left, (page.height * (pointsPerMm + y)) / 2];
  const layers = purposes.map((purpose) => {
    const drawn = page.primitives
      .filter((primitive) => purposeOf(primitive) === purpose)
      .map((p) => (p.kind === 'stroke' ? strokeOperators(p) : textOperators(p, faceOf(p.bold))));
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
  file.registerFontkit(fontkit);
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

  // A face that nothing is written with is not embedded. The names begin with a subset's tag (ISO 32000-1, 9.6.4), kept the same so
  // that equal input gives equal bytes.
  const all = pages.flatMap((page) => page.primitives);
  const regular = all.some(isRegular) && (await embed(file, 'Regular', 'SAGITA+DejaVuSans', options.fonts.regular));
  const bold = all.some(isBold) && (await embed(file, 'Bold', 'SAGITB+DejaVuSans-Bold', options.fonts.bold));
  const faceOf = (wanted: boolean): Face => (wanted ? bold : regular) as Face;

  const added = pages.map((page, k) => {
    options.tell?.(k + 1);
    const sheet = file.addPage([page.width * pointsPerMm, page.height * pointsPerMm]);
    sheet.setCropBox(0, 0, page.width * pointsPerMm, page.height * pointsPerMm);
    for (const face of [regular, bold]) if (face) sheet.node.setFontDictionary(PDFName.of(face.name), face.font.ref);
    sheet.node.Resources()?.set(PDFName.of('Properties'), file.context.obj(layers));
    sheet.node.addContentStream(file.context.register(file.context.flateStream(content(page, faceOf))));
    return sheet;
  });
  addOutline(
    file,
    pages.map((page) => page.title),
    added,
  );
  return file.save({ addDefaultPage: false });
};
