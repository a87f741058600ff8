import { offset } from '../../geometry/shape/offset.ts';
import { isSimple } from '../../geometry/shape/simple.ts';
import type { Path } from '../../geometry/shape/types.ts';
import type { Contour } from './contour.ts';

/** A contour that a tool cannot go round, and its narrowest place, mm; it has none where it crosses itself. */
export interface Refusal {
  readonly ok: false;
  readonly contour: Contour;
  readonly narrowest?: number;
}

export type Kerf = { readonly ok: true; readonly path: Path } | Refusal;

/** A slot as wide as the tool is cut by going there and back along its middle, so much (mm) apart. */
const thereAndBack = 5e-4;

/** The ways of a tool's middle round a contour, in the waste beside it. */
const ways = ({ stroke, bounds }: Contour, tool: number): readonly Path[] => {
  if (bounds === 'part') return offset(stroke.path, tool / 2);
  const inside = offset(stroke.path, -tool / 2);
  return inside.length > 0 ? inside : offset(stroke.path, (thereAndBack - tool) / 2);
};

/** Whether something is left to fall out of a contour, or to stay in it, when a tool has gone round; a slot no wider than two cuts is all dust. */
export const leavesPart = ({ stroke, bounds }: Contour, tool: number, side: 'waste' | 'line'): boolean =>
  bounds === 'part' || tool === 0 || offset(stroke.path, side === 'waste' ? -tool : -tool / 2).length > 0;

/** The widest tool (mm) that goes round a contour in one way: its narrowest place, found by halving. */
const narrowest = (contour: Contour, tooWide: number): number => {
  let [fits, not] = [0, tooWide];
  for (let n = 0; n < 14; n++) {
    const middle = (fits + not) / 2;
    if (ways(contour, middle).length === 1) fits = middle;
    else not = middle;
  }
  return (fits + not) / 2;
};

/**
 * The way of the middle of a tool (mm wide) beside a contour: outside a part, inside a window or a hole. A line's is a line, an arc's an arc, a cubic's
 * cubics within 0.001 mm. A refusal where the tool does not get through, or where the contour crosses itself.
 */
export const kerfBeside = (contour: Contour, tool: number): Kerf => {
  const { path } = contour.stroke;
  if (tool === 0 || contour.bounds === 'line') return { ok: true, path };
  if (!isSimple(path)) return { ok: false, contour };
  const [way, ...more] = ways(contour, tool);
  if (way && more.length === 0) return { ok: true, path: way };
  return { ok: false, contour, narrowest: narrowest(contour, tool) };
};
