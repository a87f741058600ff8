/// <reference path="../../templates/fontkit.d.ts" />
import {
  appendBezierCurve,
  closePath,
  degrees,
  fill,
  lineTo,
  moveTo,
  PDFDocument,
  type PDFFont,
  type PDFPage,
  setDashPattern,
  setLineWidth,
  stroke,
} from '@cantoo/pdf-lib';
import * as fontkit from 'fontkit';
import type { Primitive, Text } from '../../geometry/drawing.ts';
import { sayWith } from '../../geometry/layout.ts';
import { arcCubics } from '../../geometry/shape/arc-cubics.ts';
import { start } from '../../geometry/shape/path.ts';
import type { Point } from '../../geometry/shape/types.ts';
import { textWidth } from '../../geometry/text.ts';
import { starters } from '../../src/jobs/index.ts';
import { toPdf } from '../../templates/pdf.ts';
import { pieces, templatesOf } from '../../templates/pieces/index.ts';
import type { Template } from '../../templates/pieces/piece.ts';
import { laySheets, type Sheet } from '../../templates/sheets.ts';
import { newShop } from '../../templates/shop/index.ts';
import { dashes, lineWidth } from '../../templates/style.ts';
import { sheetInfo } from '../../templates/title-block.ts';
import { fonts } from '../fonts.ts';
import { built, jobOf } from '../solved.ts';
import type { Row } from './row.ts';

/*
 * The templates' part of `npm run bench`: the whole set of the demo job to PDF against the PDF library writing the same vectors and words by its own calls, and how
 * the time grows with the number of templates.
 */

const { job, design } = built(jobOf(starters[0]?.text ?? ''));
const shop = { ...newShop(), copies: Object.fromEntries(pieces.map(({ id }) => [id, 1])) };
const set = templatesOf(job, design, shop);
const lay = (templates: readonly Template[]) => laySheets(templates, shop, sheetInfo(job, '1.0.0'), sayWith(job.show));
const ours = (sheets: readonly Sheet[]) =>
  toPdf(sheets, { title: 'Bench', date: new Date('2024-02-29T12:00:00Z'), fonts });

const pt = 72 / 25.4;

const bareWords = (page: PDFPage, { text, size, at, anchor, turn, bold }: Text, faces: readonly [PDFFont, PDFFont]) => {
  const back = textWidth(text, size, bold) * { start: 0, middle: 0.5, end: 1 }[anchor];
  const angle = (turn * Math.PI) / 180;
  page.drawText(text, {
    x: (at.x - back * Math.cos(angle)) * pt,
    y: page.getHeight() - (at.y - back * Math.sin(angle)) * pt,
    size: size * pt,
    font: faces[bold ? 1 : 0],
    rotate: degrees(-turn),
  });
};

const bareStroke = (page: PDFPage, { path, line, matter }: Extract<Primitive, { kind: 'stroke' }>) => {
  const h = page.getHeight();
  const xy = (p: Point): [number, number] => [p.x * pt, h - p.y * pt];
  const isInk = matter === 'ink';
  page.pushOperators(
    ...(isInk
      ? []
      : [
          setLineWidth(lineWidth[line] * pt),
          setDashPattern(
            dashes[line].map((d) => d * pt),
            0,
          ),
        ]),
    moveTo(...xy(start(path))),
    ...path.segments.flatMap((s) =>
      s.kind === 'line'
        ? [lineTo(...xy(s.to))]
        : (s.kind === 'arc' ? arcCubics(s) : [s]).map((c) => appendBezierCurve(...xy(c.c1), ...xy(c.c2), ...xy(c.to))),
    ),
    ...(path.closed ? [closePath()] : []),
    isInk ? fill() : stroke(),
  );
};

/** The same by the library's own calls, with nothing added: no layers, no outline. */
const bare = async (sheets: readonly Sheet[]): Promise<Uint8Array> => {
  const file = await PDFDocument.create();
  file.registerFontkit(fontkit);
  const face = (data: Uint8Array) => file.embedFont(data, { subset: true, features: { kern: false, liga: false } });
  const faces = [await face(fonts.regular), await face(fonts.bold)] as const;
  for (const sheet of sheets) {
    const page = file.addPage([sheet.width * pt, sheet.height * pt]);
    for (const p of sheet.primitives) p.kind === 'stroke' ? bareStroke(page, p) : bareWords(page, p, faces);
  }
  return file.save();
};

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] as number;

const timed = async (work: () => Promise<unknown>): Promise<number> => {
  const from = performance.now();
  await work();
  return performance.now() - from;
};

/** How many templates are laid and written for the growth, and how often each is timed. */
const counts = [50, 500] as const;
const times = 9;

const row = (
  what: string,
  [measured, against]: readonly [number, number],
  unit: string,
  other: string,
  most: number,
): Row => ({
  what,
  measured: `${measured.toFixed(1)} ${unit}`,
  against: `${against.toFixed(1)} ${unit} ${other}`,
  ratio: `${(measured / against).toFixed(2)} ×`,
  wanted: `${most} ×`,
});

/** Measures the whole set of the demo job's templates: time and bytes, and what one costs among few and among many. */
export const benchPaper = async (): Promise<readonly Row[]> => {
  const sheets = lay(set);
  const bytes = [(await ours(sheets)).length / 1000, (await bare(sheets)).length / 1000] as const;
  const runs: (readonly [number, number])[] = [];
  // By turns, so that what else the machine does meets both.
  for (let k = 0; k < times; k++) runs.push([await timed(() => ours(sheets)), await timed(() => bare(sheets))]);
  const many = (count: number) => Array.from({ length: count }, (_, k) => set[k % set.length] as Template);
  const each = async (count: number) => {
    const found: number[] = [];
    for (let k = 0; k < 3; k++) found.push(await timed(async () => ours(lay(many(count)))));
    return median(found) / count;
  };
  const [few, most] = [await each(counts[0]), await each(counts[1])];
  const took = [median(runs.map(([a]) => a)), median(runs.map(([, b]) => b))] as const;
  const library = 'the PDF library writing the same bare';
  return [
    row(`${set.length} templates to PDF`, took, 'ms', library, 1.5),
    row('bytes of that file', bytes, 'kB', library, 1.2),
    row(`each of ${counts[1]} templates to PDF`, [most, few], 'ms', `each of ${counts[0]}`, 1.2),
  ];
};
