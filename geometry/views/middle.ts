import { sectionAlong } from '../bridge/section.ts';
import { saddleLineAt } from '../bridge/slot.ts';
import { floorRadius, undersideHeight } from '../bridge/surface.ts';
import { bridgeTopAt } from '../bridge/top-line.ts';
import type { Design, SolvedString } from '../design.ts';
import type { Berth, Drawing, Label, Mark, NoteMark } from '../drawing.ts';
import { angle, length, note, rising, showLine, stroke, upright } from '../marks.ts';
import { shortName } from '../names.ts';
import { halfSaddle } from '../saddle/face.ts';
import { crownHeight } from '../saddle/radius.ts';
import type { Settled } from '../settle.ts';
import { boundsOf } from '../shape/measure.ts';
import { pen, polyline } from '../shape/path.ts';
import { drop } from '../shape/sagitta.ts';
import type { Path, Point } from '../shape/types.ts';
import { block, elementMark } from './element.ts';
import { pinBehind, pinMarks, stringMark } from './string-way.ts';

/** How far the planes are drawn before and behind the bridge, mm. */
const BEFORE = 27;
const BEHIND = 28;
/** How far from a plane's end a leader line leads to it, mm. */
const AFTER = 1.5;

/** The string that the section along the middle shows: the one next to it, on the bass side. */
export const middleString = (design: Design): SolvedString =>
  design.strings[Math.floor((design.strings.length - 1) / 2)] as SolvedString;

/** The string that a section at y shows: in the middle as above, elsewhere the nearest. */
export const stringNear = (design: Design, y: number): SolvedString =>
  y === 0
    ? middleString(design)
    : design.strings.reduce((best, s) =>
        Math.abs(s.acrossAtSaddle - y) < Math.abs(best.acrossAtSaddle - y) ? s : best,
      );

const at = (x: number, z: number): Point => ({ x: -x, y: -z });

/** Where the section is taken; short, as a long title would take the room that the drawing needs. */
const titleOf = (y: number): Label =>
  y === 0 ? ['Along the middle'] : ['Along, ', length(Math.abs(y)), y < 0 ? ' to the bass' : ' to the treble'];

/** How far beyond an outer string a section still shows it, mm. */
const nearString = 6;

/** The top under the bridge, on its dome along the guitar. */
const topLine = (job: Settled, design: Design, y: number, tailward: number, nutward: number): Path => {
  const { radiusAlong } = job.top;
  const [from, to] = [tailward, nutward].map((x) => at(x, undersideHeight(job, y, x - design.saddleLine.x))) as [
    Point,
    Point,
  ];
  return radiusAlong === 'flat' ? polyline([from, to], false) : pen(from).arc(to, radiusAlong, 1).path();
};

/** The saddle and what lies under it where a plane along the guitar cuts them; none beyond the saddle's ends. */
const saddleMarks = (job: Settled, design: Design, y: number): readonly Mark[] => {
  const { saddleLine } = design;
  if (Math.abs(y) >= halfSaddle(design, 'across')) return [];
  const aslant = Math.hypot(1, saddleLine.slant);
  const middle = saddleLineAt(saddleLine, y);
  const [halfSlot, halfThick] = [(job.slot.width / 2) * aslant, (design.saddle.thickness / 2) * aslant];
  const crown = crownHeight(design.cut ?? design.crown, y);
  const fall = drop(floorRadius(job), y);
  const [bottom, floor] = [design.saddle.bottom - fall, design.slotFloor - fall];
  const round = Math.min(halfThick, crown - bottom);
  const saddle = pen(at(middle + halfThick, bottom))
    .line(at(middle + halfThick, crown - round))
    .arc(at(middle, crown), halfThick, 1)
    .arc(at(middle - halfThick, crown - round), halfThick, 1)
    .line(at(middle - halfThick, bottom))
    .close();
  return [
    stroke('saddle.section', saddle, {
      line: 'outline',
      purpose: 'show',
      matter: 'bone',
      hatch: { holes: [], angle: 135 },
      jobPath: 'slot.width',
    }),
    ...(job.saddle.under > 0 ? [elementMark(block(at(middle + halfSlot, bottom), at(middle - halfSlot, floor)))] : []),
  ];
};

/** Over a view's left end, row by row, with a leader line. */
const risingOver = (end: Point, leads: Point): readonly Partial<Berth>[] =>
  Array.from({ length: 12 }, (_, row) => ({ at: end, shift: { dx: -0.6, dy: -1.65 - 1.25 * row }, leads }));

/** Under a view's right end, row by row, with a leader line. */
const underBoard = (end: Point, leads: Point): readonly Partial<Berth>[] =>
  [1.4, 2.7, 4, 5.3].map((dy) => ({ at: end, shift: { dx: 0.5, dy }, leads }));

/** Under the slot, row by row: from it towards the nut, else about it, else from it towards the tail. */
const underSlot = (dy: number): Pick<NoteMark, 'shift' | 'or'> => {
  const [first, ...or] = [0, 1, 2].flatMap((row) =>
    (
      [
        [-1, 'start'],
        [0, 'middle'],
        [1, 'end'],
      ] as const
    ).map(([dx, anchor]) => ({
      anchor,
      shift: { dx, dy: dy + 1.3 * row },
    })),
  );
  return { ...first, or };
};

/** What is measured on the centre line, and so is shown in its own section only. */
const centreMarks = (
  job: Settled,
  design: Design,
  rear: number,
  tailward: number,
  nutward: number,
): readonly Mark[] => {
  const { under } = job.saddle;
  const { saddleLine, topHeight, deckCentre } = design;
  const { rise } = job.guitar;
  return [
    note('slot.depth', at(saddleLine.x, topHeight), ['slot ', length(job.slot.depth), ' deep'], {
      anchor: 'start',
      ...underSlot(1.4),
      jobPath: 'slot.depth',
    }),
    ...(under > 0
      ? [
          note('saddle.under', at(saddleLine.x, topHeight), ['element ', length(under)], {
            anchor: 'start',
            ...underSlot(2.7),
            jobPath: 'saddle.under',
          }),
        ]
      : []),
    upright(
      'guitar.neckPlaneHeight',
      at(nutward, rise),
      at(nutward, topHeight),
      -nutward,
      2.2,
      'guitar.neckPlaneHeight',
    ),
    upright('bridge.thickness', at(rear, deckCentre), at(rear, topHeight), -tailward, -1.4, 'bridge.thickness'),
    upright('light', at(rear, rise), at(rear, deckCentre), -tailward, -4.2, 'guitar.neckPlaneHeight', [
      'light ',
      length(design.straightedgeClearance),
    ]),
  ];
};

/**
 * A section along the guitar, in the middle or at another place across, seen from the right of the view from the tail: the nut lies to the right, so page x = −(distance from the nut); y DOWN from the fret plane, mm.
 * A string beside it is seen beyond it. The straightedge lies as it did strings off: higher than the fret plane at pitch by the rise.
 */
export const middle = (job: Settled, design: Design): Drawing => {
  const y = job.show.sectionAcross;
  const { bridgeFront: front, bridgeRear } = design;
  const { wood } = sectionAlong(job, design, y);
  const rear = wood.length > 0 ? -boundsOf(wood).minX : bridgeRear;
  const string = stringNear(design, y);
  const hasString = Math.abs(string.acrossAtSaddle - y) <= nearString || Math.abs(y) <= job.strings.spread / 2;
  const crown = y === 0 ? crownHeight(design.cut ?? design.crown, 0) : string.heightAboveFretPlane;
  const nutward = front - BEFORE;
  const tailward = rear + BEHIND;
  const { rise } = job.guitar;
  const over = bridgeTopAt(job, y);
  const under = undersideHeight(job, y);

  const marks: Mark[] = [
    ...wood.map((outline, k) =>
      stroke(k === 0 ? 'bridge.section' : `bridge.section.${k + 1}`, outline, {
        line: 'outline',
        purpose: 'show',
        matter: 'wood',
        hatch: { holes: [] },
        jobPath: 'bridge.thickness',
      }),
    ),
    ...saddleMarks(job, design, y),
    stroke('top', topLine(job, design, y, tailward, nutward), {
      line: 'outline',
      purpose: 'show',
      jobPath: 'top.radiusAlong',
    }),
    ...(hasString ? pinMarks(job, string, at, [over, under]) : []),
    { ...showLine('fretPlane', at(tailward, 0), at(nutward, 0), 'phantom'), jobPath: 'guitar.neckPlaneHeight' },
    { ...showLine('straightedge', at(tailward, rise), at(nutward, rise), 'thin'), jobPath: 'guitar.rise' },
    // Names and numbers in the order in which they have the first choice of a place.
    note('straightedge.name', at(tailward, rise), ['straightedge'], {
      anchor: 'start',
      shift: { dx: -0.6, dy: -0.4 },
      or: [
        // Before what stands up on the bridge, else over it all.
        { at: at(hasString && job.pins.hold === 'pins' ? pinBehind(job, string) : rear, rise), anchor: 'end' },
        ...risingOver(at(tailward, rise), at(tailward - AFTER, rise)),
      ],
    }),
    note('fretPlane.name', at(nutward, 0), ['fret plane'], {
      anchor: 'end',
      shift: { dx: 0.5, dy: 1.1 },
      or: [
        { at: at(tailward, 0), anchor: 'start', shift: { dx: -0.6, dy: 1.1 } },
        ...underBoard(at(nutward, under), at(nutward + AFTER, 0)),
      ],
    }),
    ...(hasString
      ? [
          stringMark(job, design, string, at, nutward, under),
          note(
            'string.breakAngle',
            at(string.breakX, crown),
            [`${shortName(string.name)} breaks by `, angle(string.breakAngle)],
            { shift: { dx: 0, dy: -1 }, or: [{ anchor: 'start' }, ...rising(0, -1, 2).or] },
          ),
        ]
      : []),
    note('title', at(nutward, Math.max(crown, rise)), titleOf(y), {
      anchor: 'end',
      bold: true,
      ...rising(0.7, -2.5, 5),
      jobPath: 'show.sectionAcross',
    }),
    ...(y === 0
      ? centreMarks(job, design, rear, tailward, nutward)
      : wood.length > 0
        ? [upright('thickness', at(rear, over), at(rear, under), -tailward, -1.4)]
        : []),
  ];
  return { id: 'middle', title: 'Along the middle', marks };
};
