import { deckHeight } from '../../geometry/bridge/surface.ts';
import type { Design } from '../../geometry/design.ts';
import type { Label, Mark } from '../../geometry/drawing.ts';
import {
  across,
  fixedLength,
  forHand,
  length,
  mirrored,
  note,
  radius,
  rising,
  stroke,
  upright,
} from '../../geometry/marks.ts';
import { shortName } from '../../geometry/names.ts';
import { wholeHeights } from '../../geometry/saddle/blank.ts';
import { halfSaddle, onFace } from '../../geometry/saddle/face.ts';
import type { PassAdvice } from '../../geometry/saddle/setup.ts';
import type { Settled } from '../../geometry/settle.ts';
import { pen, polyline } from '../../geometry/shape/path.ts';
import { lastPass } from './last-pass.ts';
import { notesUnder, overStrings, stringMark } from './over-strings.ts';
import type { OnePiece } from './piece.ts';
import { saddleFace, takeOff } from './saddle-face.ts';

/** From the highest string's crown up to where the strings' marks end, mm. */
const ABOVE = 2;

/** What the crown is cut to, in words. */
const crownWords = (job: Settled, { cut }: Design): Label => {
  const dashed = ' · dashed: bridge top';
  if (cut === undefined) return [`crown through each string’s height${dashed}`];
  if (job.saddle.crown !== 'gauge') return ['crown ', radius(cut.radius), dashed];
  const tool = cut.radius === 'flat' ? ['crown flat'] : ['crown by gauge ', radius(cut.radius)];
  return [...tool, ', at most ', fixedLength(cut.worst), ` off${dashed}`];
};

const takeOffWords = ({ isThere, ends }: PassAdvice): string => {
  if (isThere) return 'by the last reading nothing is to be taken off';
  const low = Math.min(ends.bass, ends.treble) < 0 ? ' (−: too low)' : '';
  return `thin line${low}: bottom by the last reading; lay the lowest edge on the bottom as it is`;
};

/** The saddle's front face, the one towards the nut: it mirrors the view from the tail, so bass and treble are named on it. */
export const saddle: OnePiece = {
  id: 'saddle',
  title: 'Saddle, front face',
  faceUp: 'front face, towards the nut',
  use: 'Cut the saddle to its height and crown, seen from its face.',
  draw: (job, design) => {
    const { strings } = design;
    const { proud, under, crown } = job.saddle;
    const { half, top, bottomAt, bottom, edge, marks: faceMarks } = saddleFace(job, design);
    const toAcross = half === 0 ? 1 : halfSaddle(design, 'across') / half;
    const deckEnd = (x: number) => ({ x, y: -deckHeight(job, x * toAcross) });
    const deck =
      job.bridge.topRadius === 'flat'
        ? polyline([deckEnd(-half), deckEnd(half)], false)
        : pen(deckEnd(-half)).arc(deckEnd(half), job.bridge.topRadius, 1).path();
    const marksEnd = top - ABOVE;
    const places = strings.map((s) => ({ s, x: onFace(design, s.acrossAtSaddle, 'along') }));
    const first = places[0];
    const last = places.at(-1);
    if (first === undefined || last === undefined) throw new RangeError('A saddle needs strings to carry.');
    const height = (side: 'bass' | 'treble', { s, x }: typeof first, end: number, ems: number): Mark =>
      upright(`height.${side}`, { x, y: -s.heightAboveFretPlane }, { x, y: bottomAt(x) }, end, ems, undefined, [
        'at ',
        shortName(s.name),
        ': ',
        fixedLength(s.saddleHeight),
      ]);
    const pass = lastPass(job, design);
    const marks: readonly Mark[] = [
      ...faceMarks,
      ...(proud > 0
        ? [
            upright('proud.height', { x: half, y: bottom }, { x: half, y: edge }, half, 4.6, 'saddle.proud', [
              'proud ',
              length(proud),
            ]),
            note('finishedBottom.name', { x: 0, y: bottomAt(0) }, ['finished bottom'], {
              scale: 0.65,
              ...rising(0, -0.25, 1),
            }),
          ]
        : []),
      ...takeOff(pass, half, edge),
      stroke('deck', deck, { line: 'hidden', purpose: 'show' }),
      ...places.map(({ s, x }) => stringMark(s.id, x, marksEnd, -s.deck)),
      height('bass', first, -half, -2.4),
      height('treble', last, half, 2.4),
      across('spread', { x: first.x, y: edge }, { x: last.x, y: edge }, edge, 2.6, undefined, [
        'strings ',
        length(last.x - first.x),
      ]),
      across('length', { x: -half, y: edge }, { x: half, y: edge }, edge, 4.8),
    ];
    const words = [
      note('bass', { x: -half, y: 0 }, ['bass'], { anchor: 'start', bold: true }),
      note('treble', { x: half, y: 0 }, ['treble'], { anchor: 'end', bold: true }),
    ];
    const seen = (all: readonly Mark[]) => mirrored(forHand(all, job.hand));
    const bassSide = job.hand === 'left' ? -1 : 1;
    const byGauge = crown === 'gauge' ? design.cut?.misses : undefined;
    const over = places.map(({ s, x }, k) => ({
      id: s.id,
      name: s.name,
      x: -x * bassSide,
      value: fixedLength(x + half),
      more: byGauge && fixedLength(byGauge[k] ?? 0),
    }));
    const notes: readonly (readonly [string, Label])[] = [
      ['crown', crownWords(job, design)],
      [
        'blank',
        [
          'blank ',
          length(design.saddle.length),
          ' by ',
          length(edge - top),
          proud > 0 ? ' (proud included) by ' : ' by ',
          length(design.saddle.thickness),
        ],
      ],
      [
        'highest',
        [
          'at its highest ',
          fixedLength(wholeHeights(job, design).highest),
          proud > 0 ? ' over the finished bottom' : ' over the bottom',
        ],
      ],
      ...(proud > 0
        ? ([
            ['proud.words', ['leave ', length(proud), ' proud under the finished bottom for the first stringing']],
          ] as const)
        : []),
      [
        'over',
        [
          byGauge
            ? 'over each string: from the bass end; small: crown over its height, − under it'
            : 'over each string: from the bass end',
        ],
      ],
      ...(under > 0 ? ([['under', ['stands on an element ', length(under), ' thick']]] as const) : []),
      ...(pass ? ([['takeOff.words', [takeOffWords(pass)]]] as const) : []),
    ];
    return {
      id: 'saddle',
      title: 'Saddle, front face',
      marks: [...seen(marks), ...overStrings(over, marksEnd, seen(words)), ...notesUnder(edge, 6.4, notes)],
    };
  },
};
