import type { Drawing, Purpose, Stroke, Text } from '../../geometry/drawing.ts';
import { boundsOfPrimitives, type LayOut, layOut } from '../../geometry/layout.ts';
import { circle, polyline } from '../../geometry/shape/index.ts';
import { bounds } from '../../geometry/shape/measure.ts';
import type { Point } from '../../geometry/shape/types.ts';
import type { Fonts, Letters } from '../letters.ts';
import { box, line, placePrimitive } from '../primitive.ts';
import type { Shop } from '../shop/index.ts';
import { layersToSvg, type SvgLayer } from '../svg.ts';
import { startedOnStraight } from './along.ts';
import { type Contour, contoursOf, insideFirst } from './contour.ts';
import { kerfBeside, leavesPart, type Refusal } from './kerf.ts';
import { refusalsSay } from './refusals.ts';
import { withoutTabs } from './tabs.ts';

type Cutter = Shop['cutter'];

export interface CutHost {
  /** The label in words, its quantities in the reader's units. */
  readonly say: LayOut['say'];
  /** The DOM to write with: the browser's own, or one made for Node. */
  readonly window: Window;
  /** Asked only where letters are drawn as outlines. */
  readonly fonts: () => Fonts | Promise<Fonts>;
}

export interface CutFile {
  /** The drawing's id; with its purpose where there is a file for each. */
  readonly id: string;
  readonly svg: string;
}

export type CutFiles =
  | {
      readonly ok: true;
      readonly files: readonly CutFile[];
      /** The characters that the fonts lack: as outlines they stand as their codes. */
      readonly lacking: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly string[] };

/** The order of work: what is only marked comes first, and what sets parts free last. */
const orderOfWork: readonly Purpose[] = ['show', 'fold', 'drill', 'cut'];

/** Text height, mm; round the drawing and between it and the check square; half a cross, and a dot's radius. */
const em = 3.5;
const margin = 5;
const cross = 2;
const dot = 0.1;

const middleOf = ({ path }: Stroke): Point => {
  const { minX, minY, maxX, maxY } = bounds(path);
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
};

const drillMarks = (stroke: Stroke, holes: 'crosses' | 'points'): readonly Stroke[] => {
  const at = middleOf(stroke);
  if (holes === 'points') return [{ ...stroke, path: circle(at, dot) }];
  const through = (dx: number, dy: number) =>
    polyline(
      [
        { x: at.x - dx, y: at.y - dy },
        { x: at.x + dx, y: at.y + dy },
      ],
      false,
    );
  return [
    { ...stroke, id: `${stroke.id}.across`, path: through(cross, 0) },
    { ...stroke, id: `${stroke.id}.along`, path: through(0, cross) },
  ];
};

type Worked = { readonly ok: true; readonly strokes: readonly Stroke[] } | Refusal;

/** What the tool follows for a contour. */
const worked = (contour: Contour, cutter: Cutter): Worked => {
  const done = (...strokes: readonly Stroke[]): Worked => ({ ok: true, strokes });
  const { stroke, bounds: inside } = contour;
  if (stroke.purpose === 'drill' && cutter.holes !== 'circles') return done(...drillMarks(stroke, cutter.holes));
  const tool = cutter.side === 'waste' ? cutter.tool : 0;
  const kerf = kerfBeside(contour, tool);
  if (!kerf.ok) return kerf;
  if (inside === 'line' || stroke.purpose === 'drill') return done({ ...stroke, path: kerf.path });
  const isHeld = (cutter.tabsIn === 'all' || inside === 'part') && leavesPart(contour, cutter.tool, cutter.side);
  const count = isHeld ? cutter.tabs : 0;
  // The round ends of the cut take half the tool's width off a tab at either side.
  const gap = cutter.tabWidth + cutter.tool;
  const left = withoutTabs(kerf.path, { count, spacing: cutter.tabSpacing, gap });
  const [only] = left;
  if (only?.closed) return done({ ...stroke, path: startedOnStraight(only) });
  return done(...left.map((path, k) => ({ ...stroke, id: `${stroke.id}.${k + 1}`, path })));
};

type Layers = Readonly<Record<Purpose, readonly (Stroke | Text)[]>>;

/** The drawing by purpose and in the order of work, as a tool follows it; or what keeps it from that. */
const layersOf = (drawing: Drawing, cutter: Cutter, say: LayOut['say']): Layers | readonly string[] => {
  const goesIn = (purpose: Purpose): boolean => cutter[purpose].use === 'in';
  const primitives = layOut(drawing.marks, { em, say });
  const strokes = primitives.filter((p) => p.kind === 'stroke');
  // What is left out of the file still tells parts from waste.
  const contours = insideFirst(contoursOf(strokes.filter(({ purpose }) => purpose === 'cut' || purpose === 'drill')));
  const answers = contours.filter(({ stroke }) => goesIn(stroke.purpose)).map((contour) => worked(contour, cutter));
  const refused = answers.filter((answer) => !answer.ok);
  if (refused.length > 0) return refusalsSay(refused, cutter.tool, drawing.title, say);
  const tooled = answers.flatMap((answer) => (answer.ok ? answer.strokes : []));
  return {
    show: goesIn('show') ? primitives.filter((p) => p.kind === 'text' || p.purpose === 'show') : [],
    fold: goesIn('fold') ? strokes.filter(({ purpose }) => purpose === 'fold') : [],
    drill: tooled.filter(({ purpose }) => purpose === 'drill'),
    cut: tooled.filter(({ purpose }) => purpose === 'cut'),
  };
};

/**
 * A drawing as files for a cutter at true size: the tool's way beside each contour as exactly as the contour itself, what lies inside before what lies round
 * it, tabs left uncut, each purpose with its own line, and a check square of a known size. Every file of a drawing has the same page, so that they lie
 * over each other. Not ok, with sentences, where the tool is too wide for a contour.
 */
export const cutFiles = async (
  drawing: Drawing,
  { cutter }: Pick<Shop, 'cutter'>,
  host: CutHost,
): Promise<CutFiles> => {
  const layers = layersOf(drawing, cutter, host.say);
  if (!('cut' in layers)) return { ok: false, problems: layers };
  const asDrawn =
    cutter.letters === 'outlines' ? (await import('../letters.ts')).lettersOf(await host.fonts()) : undefined;
  const all = orderOfWork.flatMap((purpose) => layers[purpose]);
  if (all.length === 0)
    return {
      ok: false,
      problems: [`“${drawing.title}” has no lines that go in. Let more of them go in (cutter.cut.use and its like).`],
    };
  const { minX, minY, maxX, maxY } = boundsOfPrimitives(all);
  const side = Number(cutter.square);
  const page = {
    width: Math.max(maxX - minX, side) + 2 * margin,
    height: maxY - minY + side + 3 * margin,
    title: drawing.title,
    window: host.window,
  };
  const lacking = new Set<string>();
  const written = (primitive: Stroke | Text): Stroke | Text | Letters => {
    if (primitive.kind !== 'text' || !asDrawn) return primitive;
    const letters = asDrawn(primitive);
    for (const character of letters.lacking) lacking.add(character);
    return letters;
  };
  const move = { dx: margin - minX, dy: margin - minY };
  const layer = (id: Purpose): SvgLayer => ({
    id,
    drawn: layers[id].map((p) => written(placePrimitive(p, move))),
    pen: cutter[id],
  });
  const corner = { x: margin, y: page.height - margin - side };
  const check: SvgLayer = {
    id: 'check',
    drawn: [
      box('check.square', corner, side, side, 'thin'),
      written(line('check.size', { x: corner.x + 1, y: corner.y + side - 1 }, `${side} mm`, em * 0.7)),
    ],
    pen: cutter.show,
  };
  const drawn = orderOfWork.filter((purpose) => layers[purpose].length > 0);
  const files =
    cutter.files === 'one'
      ? [{ id: drawing.id, svg: layersToSvg([...drawn.map(layer), check], page) }]
      : drawn.map((purpose) => ({ id: `${drawing.id}.${purpose}`, svg: layersToSvg([layer(purpose), check], page) }));
  return { ok: true, files, lacking: [...lacking] };
};
