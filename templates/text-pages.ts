import type { Mark } from '../geometry/drawing.ts';
import { note, showLine } from '../geometry/marks.ts';
import { textWidth } from '../geometry/text.ts';
import { em } from './block.ts';
import type { Size } from './packing.ts';
import { wrap } from './wrap.ts';

/*
 * Pages of words and numbers, to be read at the bench: rows are stacked until a page is full. Capitals are 3 mm high.
 */

/** Em size of all that is read, and of headings, mm: in the bundled font capitals of 3.06 and 3.79 mm. */
export const readSize = 4.2;
const headSize = 5.2;
const leading = 5.6;
const headRoom = 9.5;
/** Between two columns, and from a box to tick to its words, mm. */
const between = 5;
const boxSide = 3.6;
const indent = 6;

/** A stretch of a page: its height, mm, and what is drawn with its top at y. Every id begins with the one given. */
export interface Row {
  readonly height: number;
  /** Never the last on its page. */
  readonly keeps?: true;
  /** Stands over it again where it begins a page. */
  readonly under?: Row;
  readonly draw: (y: number, id: string) => readonly Mark[];
}

const put = (
  id: string,
  x: number,
  y: number,
  text: string,
  more: { size?: number; bold?: boolean; end?: boolean } = {},
) =>
  note(id, { x, y }, [text], {
    anchor: more.end ? 'end' : 'start',
    scale: (more.size ?? readSize) / em,
    ...(more.bold && { bold: true }),
  });

/** Lines of text from the top of a row at y. */
const lines = (id: string, x: number, y: number, texts: readonly string[], bold = false): readonly Mark[] =>
  texts.map((text, k) => put(`${id}.${k}`, x, y + readSize + k * leading, text, { bold }));

export const heading = (text: string): Row => ({
  height: headRoom,
  keeps: true,
  draw: (y, id) => [put(id, 0, y + headRoom - 2.6, text, { size: headSize, bold: true })],
});

export const paragraph = (
  text: string,
  width: number,
  options: { readonly bold?: boolean; readonly inward?: boolean } = {},
): Row => {
  const x = options.inward ? indent : 0;
  const texts = wrap(text, width - x, readSize, options.bold);
  return { height: texts.length * leading + 1, draw: (y, id) => lines(id, x, y, texts, options.bold) };
};

/** A sentence with a box to tick before it. */
export const toTick = (text: string, width: number): Row => {
  const texts = wrap(text, width - indent, readSize);
  return {
    height: texts.length * leading + 1,
    draw: (y, id) => {
      const [top, bottom] = [y + 0.9, y + 0.9 + boxSide];
      const side = (name: string, x0: number, y0: number, x1: number, y1: number) =>
        showLine(`${id}.box.${name}`, { x: x0, y: y0 }, { x: x1, y: y1 });
      return [
        side('top', 0, top, boxSide, top),
        side('right', boxSide, top, boxSide, bottom),
        side('bottom', boxSide, bottom, 0, bottom),
        side('left', 0, bottom, 0, top),
        ...lines(`${id}.says`, indent, y, texts),
      ];
    },
  };
};

/** A line to write on, behind what is to be written there. */
export const toWrite = (text: string, width: number): Row => ({
  height: leading + 3,
  draw: (y, id) => [
    put(`${id}.says`, 0, y + readSize + 1.5, text),
    showLine(
      `${id}.line`,
      { x: Math.min(textWidth(text, readSize) + 2, width - 10), y: y + readSize + 2.5 },
      { x: width, y: y + readSize + 2.5 },
    ),
  ],
});

/** What something is called, and its value. */
export type Pair = readonly [label: string, value: string];

/** Each pair's value on the right of its column, ruled off below; two columns where there is room. */
export const pairs = (all: readonly Pair[], width: number): readonly Row[] => {
  const columns = width >= 140 ? 2 : 1;
  const column = (width - (columns - 1) * between) / columns;
  const cell = ([label, value]: Pair) => {
    const said = wrap(value, column * 0.6, readSize, true);
    const widest = Math.max(...said.map((text) => textWidth(text, readSize, true)));
    const called = wrap(label, column - widest - 2, readSize);
    return { said, called, height: Math.max(said.length, called.length) * leading + 1 };
  };
  const rows: Row[] = [];
  for (let i = 0; i < all.length; i += columns) {
    const cells = all.slice(i, i + columns).map(cell);
    const height = Math.max(...cells.map((one) => one.height));
    rows.push({
      height,
      draw: (y, id) =>
        cells.flatMap(({ said, called }, k) => {
          const x = k * (column + between);
          return [
            ...lines(`${id}.${k}.label`, x, y, called),
            ...said.map((text, n) =>
              put(`${id}.${k}.value.${n}`, x + column, y + readSize + n * leading, text, { bold: true, end: true }),
            ),
            showLine(`${id}.${k}.rule`, { x, y: y + height - 0.4 }, { x: x + column, y: y + height - 0.4 }),
          ];
        }),
    });
  }
  return rows;
};

/** A line of a table: what its numbers are, and one for each column. */
export interface TableLine {
  readonly label: string;
  readonly cells: readonly string[];
}

/** A table under column heads; where it is too wide for the page, several with as many columns as there is room for. */
export const table = (heads: readonly string[], body: readonly TableLine[], width: number): readonly Row[] => {
  const widest = Math.max(
    ...heads.map((text) => textWidth(text, readSize, true)),
    ...body.flatMap(({ cells }) => cells.map((text) => textWidth(text, readSize))),
  );
  const cellWidth = widest + 2.5;
  const labels = width * 0.28;
  const most = Math.max(1, Math.floor((width - labels) / cellWidth));
  const parts = Math.ceil(heads.length / most);
  const each = Math.ceil(heads.length / parts);
  const rows: Row[] = [];
  for (let from = 0; from < heads.length; from += each) {
    const count = Math.min(each, heads.length - from);
    const right = (k: number) => width - (count - 1 - k) * cellWidth;
    const first = width - count * cellWidth;
    const head: Row = {
      height: leading + 2,
      keeps: true,
      draw: (y, id) =>
        heads
          .slice(from, from + count)
          .map((text, k) => put(`${id}.head.${k}`, right(k), y + readSize + 1, text, { bold: true, end: true })),
    };
    rows.push(head);
    for (const { label, cells } of body) {
      const called = wrap(label, first - 2, readSize);
      const height = called.length * leading + 1;
      rows.push({
        height,
        under: head,
        draw: (y, id) => [
          ...lines(`${id}.label`, 0, y, called),
          ...cells
            .slice(from, from + count)
            .map((text, k) => put(`${id}.cell.${k}`, right(k), y + readSize, text, { end: true })),
          showLine(`${id}.rule`, { x: 0, y: y + height - 0.4 }, { x: width, y: y + height - 0.4 }),
        ],
      });
    }
  }
  return rows;
};

/** The rows stacked on as many pages of a size as they need, each page's marks; ids are counted on from row to row. A heading goes with what it heads. */
export const pagesOf = (rows: readonly Row[], { height }: Size): readonly (readonly Mark[])[] => {
  const pages: Mark[][] = [[]];
  let y = 0;
  rows.forEach((row, i) => {
    // A row that heads others needs room for the first of them too.
    let needed = row.height;
    for (let k = i; rows[k]?.keeps && rows[k + 1]; k++) needed += rows[k + 1]?.height ?? 0;
    if (y > 0 && y + needed > height) {
      pages.push([...(row.under?.draw(0, `row${i + 1}.over`) ?? [])]);
      y = row.under?.height ?? 0;
    }
    pages.at(-1)?.push(...row.draw(y, `row${i + 1}`));
    y += row.height;
  });
  return pages;
};
