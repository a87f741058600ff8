import { type Counter, counterOf, gaugeOver } from '../../geometry/bridge/counter.ts';
import { edgeAt } from '../../geometry/bridge/edge.ts';
import { heightOn } from '../../geometry/bridge/graph.ts';
import { footprintOutline } from '../../geometry/bridge/outline.ts';
import { type Ground, groundAcross, groundAlong, sectionAcross, sectionAlong } from '../../geometry/bridge/section.ts';
import type { Stretch } from '../../geometry/bridge/spans.ts';
import { wingSpan } from '../../geometry/bridge/top-line.ts';
import type { Design } from '../../geometry/design.ts';
import type { Drawing, Label, Mark } from '../../geometry/drawing.ts';
import { sayWith } from '../../geometry/layout.ts';
import {
  across,
  forHand,
  length,
  lengthsAlike,
  moved,
  note,
  radius,
  showLine,
  stroke,
  upright,
} from '../../geometry/marks.ts';
import type { Settled } from '../../geometry/settle.ts';
import { bounds } from '../../geometry/shape/measure.ts';
import { segmentStart } from '../../geometry/shape/path.ts';
import { textWidth } from '../../geometry/text.ts';
import { em } from '../block.ts';
import type { Shop } from '../shop/index.ts';
import { onlyForBridge } from './only-for-bridge.ts';
import { notesUnder } from './over-strings.ts';
import type { ManyPiece } from './piece.ts';

/** How far a slot's walls, and the centre line, are drawn up into a profile; and how far inside a tip its thickness is taken, where the wood has only one height; mm. */
const WALL = 4;
const CENTRE = 8;
const inside = 1e-6;
/** Height of its words, in ems, and of the least wood on which its name finds room, mm. */
const small = 0.8;
const leastForName = 3.4;
/** From the wood's underside up to its name, mm. */
const LIFT = 0.7;

/** Where a profile is taken: along the guitar at a place across, or across it at a distance behind the front edge; mm. */
interface Station {
  readonly id: string;
  readonly runs: 'along' | 'across';
  readonly at: number;
  /** What it is called where it has a name of its own. */
  readonly name?: string;
  /** Asked for one by one: where there is no bridge, that is said. */
  readonly isOwn?: true;
}

/** The middle, half-way down either wing, and what the screen shows besides. */
const usualStations = (job: Settled): readonly Station[] => {
  const { sectionAcross: shownAt, sectionAlong: shownBehind } = job.show;
  const wing = (half: -1 | 1): readonly Station[] => {
    const span = wingSpan(job, half);
    const word = half < 0 ? 'bass' : 'treble';
    return span === undefined
      ? []
      : [{ id: word, runs: 'along', at: half * (job.bridge.deckWidth / 2 + span.width / 2), name: `${word} wing` }];
  };
  const usual: readonly Station[] = [{ id: 'middle', runs: 'along', at: 0, name: 'middle' }, ...wing(-1), ...wing(1)];
  return [
    ...usual,
    ...(usual.some(({ at }) => Math.abs(at - shownAt) < 0.005)
      ? []
      : [{ id: 'along', runs: 'along', at: shownAt } as const]),
    ...(shownBehind === 'saddle' ? [] : [{ id: 'across', runs: 'across', at: shownBehind } as const]),
  ];
};

const stationsOf = (job: Settled, { sections }: Shop): readonly Station[] => [
  ...(sections.usual === 'in' ? usualStations(job) : []),
  ...sections.stations.map(({ runs, at }, k): Station => ({ id: `own-${k + 1}`, runs, at, isOwn: true })),
];

const placeOf = ({ runs, at }: Station): Label => {
  if (runs === 'across') return [length(Math.abs(at)), at < 0 ? ' before the front edge' : ' behind the front edge'];
  return at === 0 ? ['on the centre line'] : [length(Math.abs(at)), at < 0 ? ' to the bass' : ' to the treble'];
};

/** The same on the wood, where there is little room. */
const shortPlace = (station: Station): Label => {
  const { runs, at } = station;
  if (runs === 'across') return placeOf(station);
  return at === 0 ? ['middle'] : [length(Math.abs(at)), at < 0 ? ' bass' : ' treble'];
};

/** A section as it is shaped, and what bounds it. */
interface Profile {
  readonly ground: Ground;
  readonly counter: Counter | undefined;
  readonly slot: readonly Stretch[];
}

const profileAt = (job: Settled, design: Design, { runs, at }: Station, foot: number): Profile => {
  const x = design.datum.x - job.bridge.frontToSaddle + at;
  const [section, ground] =
    runs === 'along'
      ? [sectionAlong(job, design, at, 'shaped'), groundAlong(job, design, at)]
      : [sectionAcross(job, design, x, 'shaped'), groundAcross(job, design, x)];
  return { ground, counter: counterOf(section.wood, ground, foot), slot: section.slot };
};

/** The walls of the slot that comes later, drawn up into the profile. */
const slotMarks = ({ over }: Counter, slot: readonly Stretch[]): readonly Mark[] =>
  slot.flatMap(([from, to], k): readonly Mark[] => [
    ...[from, to].map((x, end) => {
      const y = heightOn(over, x);
      return showLine(`slot.${k + 1}.${end + 1}`, { x, y }, { x, y: y - WALL });
    }),
    note(`slot.${k + 1}.name`, { x: (from + to) / 2, y: heightOn(over, (from + to) / 2) - WALL }, ['slot'], {
      scale: 0.8,
      shift: { dx: 0, dy: -0.3 },
    }),
  ]);

/** The thickness of the wood at a place, its dimension so far beside the profile. */
const thick = (id: string, { over }: Counter, ground: Ground, x: number, base: number, ems: number): Mark =>
  upright(id, { x, y: heightOn(over, x) }, { x, y: segmentStart(ground(x, x + 1)).y }, base, ems);

/** Whether the wood's name finds room on wood so high and wide, mm. */
const hasRoom = ({ show }: Settled, station: Station, high: number, wide: number): boolean =>
  high >= leastForName && textWidth(sayWith(show)(shortPlace(station)), small * em) + 2 * LIFT <= wide;

/** What is read of a profile while it is held: it stands on the gauge and, where there is room, on the wood. */
const nameMarks = (
  job: Settled,
  station: Station,
  { over }: Counter,
  ground: Ground,
  top: number,
  about: number,
  beside: number,
  wide: number,
): readonly Mark[] => {
  const [upper, lower] = [heightOn(over, beside), segmentStart(ground(beside, beside + 1)).y];
  return [
    note('place', { x: about, y: top }, placeOf(station), { scale: small, shift: { dx: 0, dy: 2.3 } }),
    note(
      'seen',
      { x: about, y: top },
      [station.runs === 'along' ? 'seen from the treble side' : 'seen from the tail'],
      {
        scale: small,
        shift: { dx: 0, dy: 3.4 },
      },
    ),
    ...(hasRoom(job, station, lower - upper, wide)
      ? [note('wood', { x: beside, y: lower - LIFT }, shortPlace(station), { scale: small })]
      : []),
  ];
};

const words = (job: Settled, { runs, at }: Station): readonly (readonly [string, Label])[] => {
  const { bridge } = job;
  if (runs === 'across') return [['deck', ['deck ', radius(bridge.topRadius)]]];
  const size = edgeAt(job, at);
  return size === 0 ? [] : [['edges', [`edges ${bridge.edge === 'round' ? 'rounded' : 'chamfered'} `, length(size)]]];
};

const marksOf = (
  job: Settled,
  station: Station,
  { slot, ground }: Profile,
  counter: Counter,
  back: number,
): readonly Mark[] => {
  const isAlong = station.runs === 'along';
  const names = isAlong ? (['tail', 'nut'] as const) : (['bass', 'treble'] as const);
  const wood = counter.under.map(bounds);
  const widest = wood.reduce((best, one) => (one.maxX - one.minX > best.maxX - best.minX ? one : best));
  const [from, to] = [Math.min(...wood.map((w) => w.minX)), Math.max(...wood.map((w) => w.maxX))];
  const { minX, maxX, minY, maxY } = bounds(counter.over);
  const top = minY - back;
  const middle = (widest.minX + widest.maxX) / 2;
  const place = !isAlong && widest.minX < 0 && widest.maxX > 0 ? 0 : middle;
  const marks: readonly Mark[] = [
    stroke('gauge', gaugeOver(counter, top), { line: 'outline', purpose: 'cut' }),
    ...counter.under.map((under, k) => stroke(`under.${k + 1}`, under, { line: 'outline', purpose: 'cut' })),
    ...slotMarks(counter, slot),
    ...(isAlong
      ? []
      : [showLine('centre', { x: 0, y: heightOn(counter.over, 0) - CENTRE }, { x: 0, y: maxY + 3 }, 'centre')]),
    note('left', { x: minX, y: top }, [names[0]], { anchor: 'start', bold: true, shift: { dx: 0.6, dy: 1.2 } }),
    note('right', { x: maxX, y: top }, [names[1]], { anchor: 'end', bold: true, shift: { dx: -0.6, dy: 1.2 } }),
    ...nameMarks(
      job,
      station,
      counter,
      ground,
      top,
      isAlong ? middle : 0,
      isAlong ? middle : 0.4 * widest.maxX,
      widest.maxX - widest.minX,
    ),
    thick('thickness', counter, ground, place, maxX, isAlong ? 2.4 : 5.4),
    ...(isAlong
      ? []
      : [
          thick('tip', counter, ground, from + inside, minX, -2.4),
          thick('tipTreble', counter, ground, to - inside, maxX, 2.4),
        ]),
    across('length', { x: from, y: maxY }, { x: to, y: maxY }, maxY, 3),
  ];
  const centred = isAlong ? moved(marks, -middle, 0) : marks;
  return [...forHand(centred, job.hand), ...notesUnder(maxY, 5, words(job, station))];
};

/** Where a section was asked for and there is no bridge: what is there, and the way out. */
const noProfile = (job: Settled, design: Design, station: Station): readonly Mark[] => {
  const { minX, maxX, minY, maxY } = bounds(footprintOutline(job, design));
  const front = design.datum.x - job.bridge.frontToSaddle;
  const [toBass, toTreble] = lengthsAlike(-minX, maxX);
  const [first, last] = lengthsAlike(minY - front, maxY - front);
  const reach: Label =
    station.runs === 'along'
      ? ['it reaches ', toBass, ' to the bass and ', toTreble, ' to the treble']
      : ['it reaches from ', first, ' to ', last, ' behind its front edge'];
  return notesUnder(0, 0, [
    ['none', ['no bridge ', ...placeOf(station)]],
    ['reach', reach],
    ['wayOut', ['take the section within that']],
  ]);
};

/** Profiles of chosen sections: one line parts the wood's own shape from the gauge that stands over it on the top. */
export const sections: ManyPiece = {
  id: 'sections',
  title: 'Section profiles',
  faceUp: 'the printed one',
  use: 'Saw along the line once: the upper part stands over the bridge with its feet on the top and shows light where wood is missing, the lower one is the wood’s own shape.',
  whyNot: onlyForBridge,
  usually: 0,
  draw: (job, design, shop) => {
    const { foot, back } = shop.sections;
    const say = sayWith(job.show);
    return stationsOf(job, shop).flatMap((station): readonly Drawing[] => {
      const profile = profileAt(job, design, station, foot);
      const { counter } = profile;
      const name = station.name ?? say(placeOf(station));
      const drawing = { id: `sections-${station.id}`, title: `Profile ${station.runs}, ${name}` };
      if (counter !== undefined) return [{ ...drawing, marks: marksOf(job, station, profile, counter, back) }];
      return station.isOwn ? [{ ...drawing, marks: noProfile(job, design, station) }] : [];
    });
  },
};
