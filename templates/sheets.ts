import type { Primitive } from '../geometry/drawing.ts';
import type { LayOut } from '../geometry/layout.ts';
import { type Block, blocksOf, turnedBlock } from './block.ts';
import { type Correction, sayCorrection } from './correction.ts';
import { type Form, type FormAsk, formsOf, gap, ownForms } from './form.ts';
import { joinPlan, planHeight } from './join-plan.ts';
import { legendEntries } from './legend.ts';
import { fits, type Packed, pack } from './packing.ts';
import { sizeText } from './paper.ts';
import type { Template } from './pieces/piece.ts';
import { placePrimitive } from './primitive.ts';
import type { Shop } from './shop/index.ts';
import { chosenPrinter } from './shop/printers.ts';
import { pagesFor, tilePrimitives, tilingOf } from './tiles.ts';
import { type SheetInfo, titleBlock, wholeRow } from './title-block.ts';

/** A page for a writer: its size and what is drawn on it, mm from its top left corner. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  /** What lies on it, each by its name; its title where this is left out. */
  readonly bookmarks?: readonly string[];
  readonly primitives: readonly Primitive[];
  /** The template of which it holds a part, as it is larger than the paper. */
  readonly partOf?: string;
  /** What the drawing is stretched by about the page's middle when it is written for a printer; as it is where this is left out. */
  readonly correction?: Correction;
}

/** A sheet before it is numbered: its form, and what lies on it. */
interface Page {
  readonly form: Form;
  /** The first of the blocks that lie on it. */
  readonly first: Block;
  readonly titles: readonly string[];
  readonly faces: readonly string[];
  readonly primitives: readonly Primitive[];
  readonly partOf?: string;
}

/**
 * The pieces laid on as few of a shop's sheets as can be, upright or on their side, at true size: several on a sheet and turned by a quarter where that helps, never scaled. A piece that is too
 * large for the paper is parted over pages that lie over each other; one that fills pages of its own comes last. Every sheet has its check bars in both directions, a
 * legend and a title block. Throws RangeError where the paper has no room for those.
 */
export const laySheets = (
  pieces: readonly Template[],
  shop: Shop,
  info: SheetInfo,
  say: LayOut['say'],
): readonly Sheet[] => {
  const blocks = blocksOf(pieces, say);
  const shared = blocks.filter(({ ownPage }) => !ownPage);
  const own = blocks.filter(({ ownPage }) => ownPage);
  const entries = legendEntries(shared.flatMap((b) => b.primitives).filter((p) => p.kind === 'stroke'));
  const formsFor = (ask: Partial<FormAsk>) => formsOf(shop, { entries, strip: 0, far: true, ...ask }, info.decimal);
  const roomy = (block: Block, forms: readonly Form[]) => forms.some(({ room }) => fits(block, room));
  // The longer bars on the opposite edges give way to a piece that would have to be parted because of them.
  const near = shared.length === 0 ? [] : formsFor({ far: false });
  const far = near.length === 0 ? [] : formsFor({});
  const { overlap } = shop.paper;
  const laid: readonly Page[] = [
    ...packedPages(
      shared.filter((b) => roomy(b, far)),
      far,
    ),
    ...packedPages(
      shared.filter((b) => !roomy(b, far) && roomy(b, near)),
      near,
    ),
    ...shared
      .filter((b) => !roomy(b, near))
      .flatMap((b) => tiledPages(b, formsFor({ strip: planHeight }), overlap, info.decimal)),
  ];
  // In bench order, by the first piece on each page.
  const inOrder = laid.toSorted((a, b) => blocks.indexOf(a.first) - blocks.indexOf(b.first));
  const pages = [...inOrder, ...own.flatMap((block) => ownPages(block, shop, info.decimal))];
  const printer = chosenPrinter(shop.printers);
  return pages.map(({ form, titles, faces, primitives, partOf }, i) => {
    const { paper, lying, correction } = form;
    const words = {
      titles,
      faces,
      paper:
        shop.paper.size === 'typed' ? sizeText(paper, info.decimal) : `${paper.name} ${lying ? 'lying' : 'upright'}`,
      print:
        printer === undefined
          ? 'not corrected'
          : printer.isProved
            ? wholeRow('corrected for ', printer.name, `: ${sayCorrection(correction, info.decimal)}`)
            : wholeRow('for ', printer.name, ': not proved, not corrected'),
      number: i + 1,
      of: pages.length,
    };
    return {
      width: paper.width,
      height: paper.height,
      title: titles.join(' · '),
      bookmarks: titles,
      primitives: [...form.primitives, ...titleBlock(form.titleAt, words, info), ...primitives],
      ...(partOf !== undefined && { partOf }),
      ...(printer && { correction }),
    };
  });
};

/** The blocks on pages: those that go only one way round first, the rest on whichever way makes fewer pages. All of them must fit. */
const packedPages = (blocks: readonly Block[], forms: readonly Form[]): readonly Page[] => {
  const on = (form: Form, some: readonly Block[]): readonly Page[] =>
    pack(some, form.room, gap).map((places) => packedPage(form, some, places));
  const ways = forms.map((form) => {
    const mostly = blocks.filter((block) => fits(block, form.room));
    const rest = blocks.filter((block) => !mostly.includes(block));
    const other = forms.find((f) => f !== form);
    return [...on(form, mostly), ...(other ? on(other, rest) : [])];
  });
  return ways.reduce((a, b) => (b.length < a.length ? b : a), ways[0] ?? []);
};

const packedPage = (form: Form, blocks: readonly Block[], places: readonly Packed[]): Page => {
  const laid = places.flatMap((place) => {
    const block = blocks[place.index];
    return block ? [{ ...place, block: place.turned ? turnedBlock(block) : block }] : [];
  });
  return {
    form,
    first: blocks[Math.min(...places.map(({ index }) => index))] as Block,
    titles: laid.map(({ block }) => block.title),
    faces: laid.map(({ block }) => block.face),
    primitives: laid.flatMap(({ block, x, y }) => moved(block.primitives, form.at.x + x, form.at.y + y)),
  };
};

const moved = (primitives: readonly Primitive[], dx: number, dy: number): readonly Primitive[] =>
  primitives.map((p) => placePrimitive(p, { dx, dy }));

/** A block parted over as few pages as can be, upright or lying, as it is or turned by a quarter. */
const tiledPages = (
  block: Block,
  forms: readonly Form[],
  overlap: number,
  decimal: SheetInfo['decimal'],
): readonly Page[] => {
  const ways = forms
    .flatMap((form) => [block, turnedBlock(block)].map((placed) => ({ form, placed })))
    .map((way) => ({ ...way, pages: pagesFor(way.placed, way.form.room, overlap, decimal) }));
  const { form, placed } = ways.reduce((a, b) => (b.pages < a.pages ? b : a));
  const tiling = tilingOf(placed, form.room, overlap, decimal);
  return tiling.tiles.map((tile) => ({
    form,
    first: block,
    titles: [`${block.title} ${tile.name}`],
    faces: [block.face],
    partOf: block.title,
    primitives: [
      ...joinPlan(form.stripAt, form.room.width, placed, tile, tiling),
      ...moved(
        tilePrimitives(placed.primitives, tile, tiling, overlap),
        form.at.x - tile.window.minX,
        form.at.y - tile.window.minY,
      ),
    ],
  }));
};

/** A drawing made for its page's room may be larger than that by what sums leave in their last digits, mm. */
const hair = 1e-6;

/** A block on a page by itself, at the top left of its room; parted over pages where it is larger. */
const ownPages = (block: Block, shop: Shop, decimal: SheetInfo['decimal']): readonly Page[] => {
  const form = ownForms(shop, decimal).find(
    ({ room }) => block.width <= room.width + hair && block.height <= room.height + hair,
  );
  if (!form) {
    const forms = formsOf(shop, { entries: [], strip: planHeight, far: true }, decimal);
    return tiledPages(block, forms, shop.paper.overlap, decimal);
  }
  const primitives = moved(block.primitives, form.at.x, form.at.y);
  return [{ form, first: block, titles: [block.title], faces: [], primitives }];
};
