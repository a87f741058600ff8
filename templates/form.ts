import type { Primitive } from '../geometry/drawing.ts';
import { layOut } from '../geometry/layout.ts';
import type { Point } from '../geometry/shape/types.ts';
import { type DecimalMark, decimalText } from '../geometry/units.ts';
import { barsDepth, barsLead, checkBars, farCheckBars, farDepth, farLead, longestBar } from './check-bars.ts';
import { type Correction, quarterTurnedCorrection } from './correction.ts';
import { type LegendEntry, legend } from './legend.ts';
import type { Size } from './packing.ts';
import { type Paper, paperOf, quarterTurned } from './paper.ts';
import { box } from './primitive.ts';
import type { Shop } from './shop/index.ts';
import { chosenCorrection, chosenPrinter } from './shop/printers.ts';
import { titleBlockHeight, titleBlockWidth } from './title-block.ts';

/** Text height of the check bars' labels, mm. */
export const barEm = 3;
/** Between two pieces, and around what stands beside them, mm. */
export const gap = 5;
export const pad = 3;

/** A sheet before any piece lies on it: what stands on each alike, where the title block goes, and the room that is left. */
export interface Form {
  readonly paper: Paper;
  readonly lying: boolean;
  readonly correction: Correction;
  readonly primitives: readonly Primitive[];
  readonly titleAt: Point;
  /** A strip across the sheet, over legend and title block, for what a page of several says of itself; as high as was asked for. */
  readonly stripAt: Point;
  readonly at: Point;
  readonly room: Size;
}

export interface FormAsk {
  /** The kinds of line that the legend explains. */
  readonly entries: readonly LegendEntry[];
  /** Height of the strip, mm; 0 for none. */
  readonly strip: number;
  /** Whether longer check bars stand along the opposite edges too. */
  readonly far: boolean;
}

/** No template is laid into less room than this, mm. */
const leastRoom = 30;
/** A legend narrower than this goes over the title block instead of beside it, mm. */
const leastLegend = 43;

const formOn = (paper: Paper, lying: boolean, correction: Correction, margin: number, ask: FormAsk): Form => {
  // A page that is printed larger, to make up for a printer that draws too small, still keeps its margins: so the frame is drawn in.
  const inset = (whole: number, factor: number) => margin + (whole - whole / Math.max(1, factor)) / 2;
  const left = inset(paper.width, correction.across);
  const top = inset(paper.height, correction.down);
  const inner = { x: left + pad, y: top + pad };
  const outer = { x: paper.width - inner.x, y: paper.height - inner.y };
  const aside = ask.far ? farDepth + pad : 0;
  const right = outer.x - aside;
  const bottom = outer.y - aside;
  const at = { x: inner.x + barsDepth + gap, y: inner.y + barsDepth + gap };

  const bandBeside = (x: number) => {
    const column = right - x - titleBlockWidth - gap;
    const beside = column >= leastLegend;
    const { height } = legend({ x: 0, y: 0 }, beside ? column : right - x, ask.entries);
    const width = beside ? column : right - x;
    return { x, width, height: beside ? Math.max(titleBlockHeight, height) : titleBlockHeight + gap + height };
  };
  // Legend and title block reach under the bars on the left where those end above them.
  const wide = bandBeside(inner.x);
  const band = at.y + longestBar + gap <= bottom - wide.height ? wide : bandBeside(at.x);
  const stripAt = { x: at.x, y: bottom - band.height - gap - ask.strip };
  const floor = ask.strip > 0 ? stripAt.y - gap : bottom - band.height - gap;

  const bars = [
    ...checkBars({ x: at.x, y: inner.y + barsLead }, { x: inner.x + barsLead, y: at.y }),
    ...(ask.far
      ? farCheckBars(
          { at: { x: at.x, y: outer.y - farDepth + farLead }, room: right - at.x },
          { at: { x: outer.x - farDepth + farLead, y: at.y }, room: bottom - at.y },
        )
      : []),
  ];
  return {
    paper,
    lying,
    correction,
    primitives: [
      box('sheet.frame', { x: left, y: top }, paper.width - 2 * left, paper.height - 2 * top, 'thin'),
      ...layOut(bars, { em: barEm, say: (label) => label.join('') }),
      ...legend({ x: band.x, y: bottom - band.height }, band.width, ask.entries).primitives,
    ],
    titleAt: { x: right - titleBlockWidth, y: bottom - titleBlockHeight },
    stripAt,
    at,
    room: { width: right - at.x, height: floor - at.y },
  };
};

const isPossible = ({ at, room, titleAt }: Form): boolean =>
  room.width >= longestBar &&
  room.height >= leastRoom &&
  at.y + longestBar <= titleAt.y + titleBlockHeight &&
  titleAt.x >= at.x - barsDepth - gap;

/**
 * The ways in which a shop's sheet can lie, upright first. Throws RangeError where it has no room for check bars, title block and a template, neither upright nor on its side, its numbers with the decimal mark given.
 */
export const formsOf = (shop: Shop, ask: FormAsk, decimal?: DecimalMark): readonly Form[] => {
  const paper = paperOf(shop, decimal);
  const { margin } = shop.paper;
  const correction = chosenCorrection(chosenPrinter(shop.printers));
  const forms = [
    formOn(paper, false, correction, margin, ask),
    formOn(quarterTurned(paper), true, quarterTurnedCorrection(correction), margin, ask),
  ].filter(isPossible);
  if (forms.length === 0)
    throw new RangeError(
      `${paper.name} with a margin of ${decimalText(margin, 1, decimal)} mm has no room for check bars, legend, title block and a template. Choose a larger paper, A4 for one, or a smaller margin.`,
    );
  return forms;
};

/** What a page of its own asks for: it says what it needs itself. */
const ownAsk: FormAsk = { entries: [], strip: 0, far: true };

/** The forms of pages that a drawing fills by itself, the one that such drawings are made for first. Throws RangeError as `formsOf` does. */
export const ownForms = (shop: Shop, decimal?: DecimalMark): readonly Form[] => formsOf(shop, ownAsk, decimal);

/** The room that a drawing which fills a page of its own has on a shop's paper, mm; its head is its own. Throws RangeError as `formsOf` does. */
export const ownRoom = (shop: Shop, decimal?: DecimalMark): Size => (ownForms(shop, decimal)[0] as Form).room;
