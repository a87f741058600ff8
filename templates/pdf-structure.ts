import { type PDFDocument, PDFHexString, PDFName, type PDFPage, type PDFRef } from '@cantoo/pdf-lib';
import type { Purpose } from '../geometry/drawing.ts';
import { purposes } from './style.ts';

/** Adds a layer for each purpose (optional content groups, ISO 32000-1, 8.11), all shown; returns each one's reference. */
export const addLayers = (file: PDFDocument): Readonly<Record<Purpose, PDFRef>> => {
  const { context, catalog } = file;
  const layer = (name: string) => context.register(context.obj({ Type: 'OCG', Name: PDFHexString.fromText(name) }));
  const layers = { cut: layer('cut'), drill: layer('drill'), fold: layer('fold'), show: layer('show') };
  const all = purposes.map((purpose) => layers[purpose]);
  catalog.set(PDFName.of('OCProperties'), context.obj({ OCGs: all, D: { Order: all, ON: all } }));
  return layers;
};

/** A line of an outline, and the page that it leads to. */
export interface Bookmark {
  readonly title: string;
  readonly page: PDFPage;
}

/** Adds an outline (bookmarks; ISO 32000-1, 12.3.3). */
export const addOutline = (file: PDFDocument, bookmarks: readonly Bookmark[]): void => {
  const { context, catalog } = file;
  const outline = context.nextRef();
  const refs = bookmarks.map(() => context.nextRef());
  const neighbour = (key: string, ref: PDFRef | undefined) => (ref ? { [key]: ref } : {});
  bookmarks.forEach(({ title, page }, n) => {
    const item = context.obj({
      Title: PDFHexString.fromText(title),
      Parent: outline,
      Dest: [page.ref, 'Fit'],
      ...neighbour('Prev', refs[n - 1]),
      ...neighbour('Next', refs[n + 1]),
    });
    const ref = refs[n];
    if (ref) context.assign(ref, item);
  });
  context.assign(
    outline,
    context.obj({
      Type: 'Outlines',
      Count: refs.length,
      ...neighbour('First', refs[0]),
      ...neighbour('Last', refs.at(-1)),
    }),
  );
  catalog.set(PDFName.of('Outlines'), outline);
};
