import type { Drawing, Primitive } from '../geometry/drawing.ts';
import { boundsOfPrimitives, type LayOut, layOut } from '../geometry/layout.ts';
import { cleanName } from '../geometry/names.ts';
import type { Point } from '../geometry/shape/types.ts';
import { fitText } from '../geometry/text.ts';
import { barsDepth, barsLead, checkBars, longestBar } from './check-bars.ts';
import { type LegendEntry, legend, legendEntries } from './legend.ts';
import { fits, type Packed, pack, type Size } from './packing.ts';
import { margin, type Paper, papers, quarterTurned } from './paper.ts';
import type { Template } from './pieces/piece.ts';
import { box, line, placePrimitive } from './primitive.ts';
import { type SheetInfo, titleBlock, titleBlockHeight, titleBlockWidth } from './title-block.ts';

/** A page for a writer: its size and what is drawn on it, mm from its top left corner. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly primitives: readonly Primitive[];
}

type Say = LayOut['say'];

/** Text height in pieces, of the check bars' labels and of a piece's title, mm. */
export const em = 3.5;
const barEm = 3;
const titleSize = 4;
const faceSize = 3;
/** Between two pieces, and around what stands beside them, mm. */
const gap = 5;
const pad = 3;

/** One piece laid out, its title over it; its corner at the origin. */
interface Block extends Size {
  readonly title: string;
  readonly primitives: readonly Primitive[];
}

/**
 * The pieces laid on as few sheets as can be, upright or on their side, at true size: several on a sheet and turned by a quarter where that
 * helps, never scaled. Every sheet has its check bars in both directions, a legend and a title block. Throws RangeError for a
 * piece that is too big for the paper, saying how big it is, how much room there is, and which paper would do.
 */
export const laySheets = (pieces: readonly Template[], paper: Paper, info: SheetInfo, say: Say): readonly Sheet[] => {
  const blocks = pieces.map((piece) => blockOf(piece, say));
  const entries = legendEntries(blocks.flatMap((b) => b.primitives).filter((p) => p.kind === 'stroke'));
  const plans = plan(blocks, paper, entries);
  return plans.map(({ form, packed }, i) => {
    const on = packed.map(({ index }) => blocks[index]?.title ?? '');
    const title = on.join(' · ');
    const primitives = [
      ...form.primitives,
      ...titleBlock(form.titleAt, on, info, { number: i + 1, of: plans.length }),
      ...packed.flatMap((place) => putDown(blocks, place, form.at)),
    ];
    const { width, height } = form.paper;
    return { width, height, title, primitives };
  });
};

/** One piece on a page of its own, cropped to it, its title over it and check bars in both directions beside it. */
export const pieceSheet = (piece: Template, info: SheetInfo, say: Say): Sheet =>
  cropped(piece, faceOf(piece), info, say);

/** A drawing of several views on a page of its own, as `pieceSheet` lays a piece; it says how the views are arranged. */
export const viewSheet = (drawing: Drawing, info: SheetInfo, say: Say): Sheet =>
  cropped(drawing, 'third-angle projection (ISO 5456-2)', info, say);

const cropped = (piece: Drawing, remark: string, info: SheetInfo, say: Say): Sheet => {
  const inside = layOut(piece.marks, { em, say });
  const bounds = boundsOfPrimitives(inside);
  const left = gap + barsDepth + gap;
  const top = gap + titleSize + 2 * faceSize + 2.6 * pad;
  const width = Math.max(bounds.maxX - bounds.minX, longestBar);
  const height = Math.max(bounds.maxY - bounds.minY, longestBar);
  const below = top + height + gap;
  const name = [piece.title, '1:1', info.job].map(cleanName).join(' · ');
  const about = [remark, [info.units, info.hand, info.date, `Sagitta ${info.version}`].join(' · ')];
  const page = { width: left + width + gap, height: below + barsDepth + gap };
  const room = page.width - 2 * gap;
  const bars = checkBars({ x: left, y: below + barsLead }, { x: gap + barsLead, y: top });
  return {
    ...page,
    title: piece.title,
    primitives: [
      line('sheet.title', { x: gap, y: gap + pad }, fitText(name, room, titleSize, true), titleSize, true),
      ...about.map((says, k) =>
        line(`sheet.about.${k}`, { x: gap, y: gap + (2.7 + 1.3 * k) * pad }, fitText(says, room, faceSize), faceSize),
      ),
      ...layOut(bars, { em: barEm, say }),
      ...inside.map((p) => placePrimitive(p, { dx: left - bounds.minX, dy: top - bounds.minY })),
    ],
  };
};

const faceOf = ({ faceUp }: Template): string => `Face up: ${faceUp ?? 'the printed one'}`;

const blockOf = (piece: Template, say: Say): Block => {
  const inside = layOut(piece.marks, { em, say });
  const { minX, minY } = boundsOfPrimitives(inside);
  const title = cleanName(piece.title);
  const heading = line(`${piece.id}.title`, { x: minX, y: minY - 7 }, title, titleSize, true);
  const face = line(`${piece.id}.face`, { x: minX, y: minY - 2.5 }, faceOf(piece), faceSize);
  const named = [heading, face, ...inside.map((p) => ({ ...p, id: `${piece.id}.${p.id}` }))];
  const bounds = boundsOfPrimitives(named);
  return {
    title,
    width: bounds.maxX - bounds.minX,
    height: bounds.maxY - bounds.minY,
    primitives: named.map((p) => placePrimitive(p, { dx: -bounds.minX, dy: -bounds.minY })),
  };
};

/** A sheet before any piece lies on it: what stands on each alike, where the title block goes, and the room that is left. */
interface Form {
  readonly paper: Paper;
  readonly primitives: readonly Primitive[];
  readonly titleAt: Point;
  readonly at: Point;
  readonly room: Size;
}

const formOf = (paper: Paper, entries: readonly LegendEntry[]): Form => {
  const inner = margin + pad;
  const frame = box(
    'sheet.frame',
    { x: margin, y: margin },
    paper.width - 2 * margin,
    paper.height - 2 * margin,
    'thin',
  );
  const right = paper.width - inner;
  const bottom = paper.height - inner;
  const column = right - inner - titleBlockWidth - gap;
  const band = Math.max(titleBlockHeight, legend({ x: 0, y: 0 }, column, entries).height);
  const at = { x: inner + barsDepth + gap, y: inner + barsDepth + gap };
  const bars = checkBars({ x: at.x, y: inner + barsLead }, { x: inner + barsLead, y: at.y });
  return {
    paper,
    primitives: [
      frame,
      ...layOut(bars, { em: barEm, say: (label) => label.join('') }),
      ...legend({ x: inner, y: bottom - band }, column, entries).primitives,
    ],
    titleAt: { x: right - titleBlockWidth, y: bottom - titleBlockHeight },
    at,
    room: { width: right - at.x, height: bottom - band - gap - at.y },
  };
};

interface Plan {
  readonly form: Form;
  readonly packed: readonly Packed[];
}

/** The pieces on sheets: those that go only one way round first, the rest on whichever way makes fewer sheets. */
const plan = (blocks: readonly Block[], paper: Paper, entries: readonly LegendEntry[]): readonly Plan[] => {
  const upright = formOf(paper, entries);
  const lying = formOf(quarterTurned(paper), entries);
  const only = (form: Form, other: Form) => (b: Block) => fits(b, form.room) && !fits(b, other.room);
  for (const block of blocks)
    if (!fits(block, upright.room) && !fits(block, lying.room)) throw tooBig(block, lying, entries);
  const onlyUpright = blocks.filter(only(upright, lying));
  const onlyLying = blocks.filter(only(lying, upright));
  const allButLying = blocks.filter((b) => !onlyLying.includes(b));
  const allButUpright = blocks.filter((b) => !onlyUpright.includes(b));
  const mostlyUpright = [...packOn(upright, allButLying, blocks), ...packOn(lying, onlyLying, blocks)];
  const mostlyLying = [...packOn(lying, allButUpright, blocks), ...packOn(upright, onlyUpright, blocks)];
  return mostlyUpright.length <= mostlyLying.length ? mostlyUpright : mostlyLying;
};

const packOn = (form: Form, some: readonly Block[], all: readonly Block[]): readonly Plan[] =>
  pack(some, form.room, gap).map((sheet) => ({
    form,
    packed: sheet.map((place) => ({ ...place, index: all.indexOf(some[place.index] as Block) })),
  }));

const putDown = (blocks: readonly Block[], { index, x, y, turned }: Packed, at: Point): readonly Primitive[] => {
  const block = blocks[index];
  if (!block) return [];
  // A quarter turn against the clock, so that what was read from below is read from the right.
  const placing = turned
    ? { turn: -Math.PI / 2, dx: at.x + x, dy: at.y + y + block.width }
    : { dx: at.x + x, dy: at.y + y };
  return block.primitives.map((p) => placePrimitive(p, placing));
};

const tooBig = (block: Block, { paper, room }: Form, entries: readonly LegendEntry[]): RangeError => {
  const mm = (size: Size) => `${size.width.toFixed(1)} × ${size.height.toFixed(1)} mm`;
  const larger = Object.values(papers).find((p) =>
    [p, quarterTurned(p)].some((sheet) => fits(block, formOf(sheet, entries).room)),
  );
  const way = larger
    ? `Choose a larger paper, ${larger.name} for one.`
    : 'No paper here is large enough: print the piece’s own SVG file on a roll.';
  return new RangeError(
    `“${block.title}” is ${mm(block)} with its notes, and does not fit on ${paper.name}: on its side it has room for ${mm(room)}. ` +
      `A template is never scaled. ${way}`,
  );
};
