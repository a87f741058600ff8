import { endProfile } from '../bridge/profile.ts';
import { type Section, sectionAcross } from '../bridge/section.ts';
import { floorRadius, undersideHeight } from '../bridge/surface.ts';
import type { Design } from '../design.ts';
import type { Drawing, Label, Mark } from '../drawing.ts';
import { boardRadius } from '../instrument/board.ts';
import { across, fixedLength, forHand, length, note, radius, rising, showLine, stroke, upright } from '../marks.ts';
import { saddleOutline, underSaddle } from '../saddle/face.ts';
import type { Settled } from '../settle.ts';
import { circle } from '../shape/arc.ts';
import { pen, polyline } from '../shape/path.ts';
import { drop } from '../shape/sagitta.ts';
import type { Path } from '../shape/types.ts';
import { elementMark } from './element.ts';

/** How far the top is drawn beyond the bridge, mm. */
const BEYOND = 5;

/** An arc of a radius (or a straight line, for `flat`) over ±half, its middle at height z; y DOWN. */
const archedLine = (r: number | 'flat', z: number, half: number): Path => {
  const y = -z + drop(r, half);
  const from = { x: -half, y };
  const to = { x: half, y };
  return r === 'flat' ? polyline([from, to], false) : pen(from).arc(to, r, 1).path();
};

/** What the crown is cut to, in words. */
const crownWords = (job: Settled, { cut }: Design): Label => {
  if (cut === undefined) return ['crown by each string'];
  return ['crown ', radius(cut.radius), job.saddle.crown === 'gauge' && cut.radius !== 'flat' ? ' gauge' : ''];
};

/** The plane that cuts the bridge: at the saddle line, along which the saddle stands in its slot; or square to the centre line at a distance from the nut. */
interface Plane {
  readonly title: Label;
  readonly at: number;
  readonly wood: readonly Path[];
  readonly isAtSaddle: boolean;
}

const planeOf = (job: Settled, design: Design): Plane => {
  const { sectionAlong } = job.show;
  if (sectionAlong === 'saddle')
    return { title: ['From the tail'], at: design.saddleLine.x, wood: [endProfile(job)], isAtSaddle: true };
  const at = design.datum.x - job.bridge.frontToSaddle + sectionAlong;
  const { wood }: Section = sectionAcross(job, design, at);
  // Short, as a long title would take the room that the drawing needs: the number is the field's, behind the front edge.
  return { title: ['From the tail at ', length(sectionAlong)], at, wood, isAtSaddle: false };
};

/** The saddle and what lies under it: cut at the saddle line, elsewhere only where they would stand. */
const saddleMarks = ({ isAtSaddle }: Plane, saddle: Path, element: readonly Path[]): readonly Mark[] =>
  isAtSaddle
    ? [
        stroke('saddle', saddle, { line: 'outline', purpose: 'show', matter: 'bone', jobPath: 'slot.depth' }),
        ...element.map(elementMark),
      ]
    : [stroke('saddle', saddle, { line: 'phantom', purpose: 'show', jobPath: 'slot.depth' })];

/**
 * A section across, seen from the tail: x across (+ treble, to the right; mirrored for the left hand), y DOWN from the fret plane, mm. At the saddle line it shows the saddle in its slot; square to the centre line
 * anywhere else the wood alone, and where the saddle would stand.
 */
export const tail = (job: Settled, design: Design): Drawing => {
  const { bridge, guitar } = job;
  const half = bridge.length / 2;
  const shoulder = bridge.deckWidth / 2;
  const { profile, strings } = design;
  const plane = planeOf(job, design);
  const behind = plane.isAtSaddle ? 0 : plane.at - design.saddleLine.x;
  const saddle = saddleOutline(design, 'across', floorRadius(job));
  const element = job.saddle.under > 0 ? [underSaddle(job, design, 'across')] : [];
  const board = boardRadius(guitar, design.saddleLine.x);
  const reach = Math.min(job.strings.spread / 2 + 9, board === 'flat' ? Number.POSITIVE_INFINITY : board * 0.95);
  const bottom = -undersideHeight(job, half);
  const highest = Math.max(...strings.map((s) => s.heightAboveFretPlane + s.gauge));

  const marks: Mark[] = [
    ...plane.wood.map((wood, k) =>
      stroke(k === 0 ? 'bridge.profile' : `bridge.profile.${k + 1}`, wood, {
        line: 'outline',
        purpose: 'show',
        matter: 'wood',
        hatch: { holes: plane.isAtSaddle ? [saddle, ...element] : [] },
        jobPath: 'bridge.topRadius',
      }),
    ),
    stroke('top', archedLine(guitar.topRadius, undersideHeight(job, 0, behind), half + BEYOND), {
      line: 'outline',
      purpose: 'show',
      jobPath: 'guitar.topRadius',
    }),
    ...saddleMarks(plane, saddle, element),
    stroke('board', archedLine(board, 0, reach), {
      line: 'phantom',
      purpose: 'show',
      jobPath: 'guitar.boardRadiusEnd',
    }),
    // From string to underside: stretched heights would take what runs past them through the numbers.
    showLine('centre', { x: 0, y: -highest }, { x: 0, y: bottom }, 'centre'),
    ...strings.map((s) => ({
      ...showLine(
        `gap.${s.id}`,
        { x: s.acrossAtSaddle, y: -s.heightAboveFretPlane },
        { x: s.acrossAtSaddle, y: -s.deck },
      ),
      jobPath: `strings.list.${s.id}.setback`,
    })),
    ...strings.map((s) =>
      stroke(`string.${s.id}`, circle({ x: s.acrossAtSaddle, y: -s.heightAboveFretPlane - s.gauge / 2 }, s.gauge / 2), {
        line: 'thin',
        purpose: 'show',
        matter: 'ink',
      }),
    ),
    ...strings.map((s) =>
      note(`gap.${s.id}.value`, { x: s.acrossAtSaddle, y: -highest }, [fixedLength(s.exposure)], {
        bold: true,
        shift: { dx: 0, dy: -0.6 },
        stagger: 'gaps',
      }),
    ),
    upright(
      'bridge.tipThickness',
      { x: -half, y: -profile.tipTop },
      { x: -half, y: -profile.tipUnderside },
      -half,
      -4.4,
      'bridge.tipThickness',
    ),
    ...(bridge.tipTreble === 'same'
      ? []
      : [
          upright(
            'bridge.tipTreble',
            { x: half, y: -profile.tipTopTreble },
            { x: half, y: -profile.tipUnderside },
            half,
            4.4,
            'bridge.tipTreble',
          ),
        ]),
    across(
      'strings.spread',
      { x: -job.strings.spread / 2, y: -(strings[0]?.heightAboveFretPlane ?? 0) },
      { x: job.strings.spread / 2, y: -(strings.at(-1)?.heightAboveFretPlane ?? 0) },
      bottom,
      2.4,
      'strings.spread',
    ),
    across(
      'bridge.deckWidth',
      { x: -shoulder, y: -profile.shoulderBass },
      { x: shoulder, y: -profile.shoulderTreble },
      bottom,
      4.3,
      'bridge.deckWidth',
    ),
    note('bridge.topRadius', { x: -shoulder, y: -profile.shoulderBass }, ['deck ', radius(bridge.topRadius)], {
      anchor: 'end',
      ...rising(-0.6, -0.5, 3),
      jobPath: 'bridge.topRadius',
    }),
    note(
      'board.radius',
      { x: reach, y: drop(board, reach) },
      [guitar.boardRadiusNut === guitar.boardRadiusEnd ? 'board ' : 'board here ', radius(board)],
      {
        anchor: 'start',
        ...rising(0.8, -0.6, 3),
        jobPath: 'guitar.boardRadiusEnd',
      },
    ),
    note('crown.radius', { x: -shoulder, y: -highest }, crownWords(job, design), {
      anchor: 'end',
      shift: { dx: -0.6, dy: -0.5 },
      or: [
        ...rising(-0.6, -0.5, 3).or,
        ...rising(0.6, -0.5, 3).or.map((berth) => ({
          ...berth,
          at: { x: shoulder, y: -highest },
          anchor: 'start' as const,
        })),
      ],
    }),
    note('bass', { x: -half, y: bottom }, ['bass'], { anchor: 'start', shift: { dx: 0, dy: 1.6 } }),
    note('treble', { x: half, y: bottom }, ['treble'], { anchor: 'end', shift: { dx: 0, dy: 1.6 } }),
  ];
  const header: readonly Mark[] = [
    note('title', { x: -half, y: -highest }, plane.title, {
      anchor: 'start',
      bold: true,
      shift: { dx: 0, dy: -2 },
      stagger: 'gaps',
      jobPath: 'show.sectionAlong',
    }),
    note('gaps', { x: half, y: -highest }, ['gap at each string'], {
      anchor: 'end',
      shift: { dx: 0, dy: -2 },
      stagger: 'gaps',
    }),
  ];
  return { id: 'tail', title: 'From the tail', marks: [...forHand(marks, job.hand), ...header] };
};
