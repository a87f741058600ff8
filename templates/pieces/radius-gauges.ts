import type { Design } from '../../geometry/design.ts';
import type { Drawing, Mark } from '../../geometry/drawing.ts';
import { fretAt } from '../../geometry/instrument/frets.ts';
import { across, fixedLength, length, note, stroke, upright } from '../../geometry/marks.ts';
import { gaugeRadii, markedIn } from '../../geometry/saddle/gauges.ts';
import { acrossAt } from '../../geometry/saddle/heights.ts';
import type { Settled } from '../../geometry/settle.ts';
import { pen } from '../../geometry/shape/path.ts';
import { sagitta } from '../../geometry/shape/sagitta.ts';
import type { Path } from '../../geometry/shape/types.ts';
import { formatQuantity } from '../../geometry/units.ts';
import type { Shop } from '../shop/index.ts';
import { notesUnder } from './over-strings.ts';
import type { ManyPiece } from './piece.ts';

/** Wood or card left behind a gauge's edge where it is least, and between the two gauges of a radius, mm. */
const BODY = 17;
const APART = 22;
/** No gauge is shorter than this, and none longer than so many radii, mm: steeper ends are of no use. */
const SHORTEST = 60;
const LONGEST = 1.6;
/** How far a board's edges stand beyond its outer strings where its width was not measured, mm [practice]. */
const BEYOND = 4;

/** A radius, mm, what of this guitar has it, and the length along which that has to be looked at. */
interface Wanted {
  readonly radius: number;
  readonly of: readonly string[];
  readonly long: number;
}

/** How wide the board is at its last fret, by its outer strings. */
const boardEnd = (job: Settled, { strings }: Design): number => {
  const x = fretAt(job.guitar.scale, job.guitar.frets);
  const places = strings.map((s) => acrossAt(s, x));
  return Math.max(...places) - Math.min(...places) + 2 * BEYOND;
};

const ofJob = (job: Settled, design: Design): readonly Wanted[] => {
  const { guitar, bridge } = job;
  const one = (of: string, radius: number | 'flat' | undefined, long: number): readonly Wanted[] =>
    typeof radius === 'number' ? [{ radius, of: [of], long }] : [];
  return [
    ...one('board at its end', guitar.boardRadiusEnd, boardEnd(job, design)),
    ...one('bridge top', bridge.topRadius, Math.min(bridge.deckWidth, bridge.length)),
    ...one('saddle’s crown', design.cut?.radius, design.saddle.length),
    ...one('top’s dome across', guitar.topRadius, bridge.length),
  ];
};

const ofShop = ({ besides, list }: Shop['gauges'], long: number): readonly Wanted[] => {
  const usual = gaugeRadii.filter(
    (radius): radius is number =>
      radius !== 'flat' && (besides === 'both' || besides === (markedIn(radius) === 'in' ? 'inch' : 'metric')),
  );
  return [...usual, ...list.map(({ radius }) => radius)].map((radius) => ({ radius, of: [], long }));
};

/** A radius to the hundredth of a mm: gauges that are one to it are one. */
const named = (radius: number): string => String(Number(radius.toFixed(2)));

/** The gauges of a job and its shop, each radius once, the job's own first. */
const allWanted = (job: Settled, design: Design, { gauges }: Shop): readonly Wanted[] => {
  const own = ofJob(job, design);
  const long = Math.max(SHORTEST, job.bridge.deckWidth, ...own.map((one) => one.long));
  const byName = new Map<string, Wanted>();
  for (const one of [...own, ...ofShop(gauges, long)]) {
    const key = named(one.radius);
    const same = byName.get(key);
    byName.set(
      key,
      same === undefined
        ? one
        : { radius: same.radius, of: [...same.of, ...one.of], long: Math.max(same.long, one.long) },
    );
  }
  return [...byName.values()];
};

/** The two gauges of a radius: one with a hollow edge below, and under it one with a round edge above. */
const gaugePaths = (radius: number, half: number, fall: number): { readonly hollow: Path; readonly round: Path } => {
  const foot = BODY + fall;
  const crest = foot + APART;
  return {
    hollow: pen({ x: -half, y: 0 })
      .line({ x: half, y: 0 })
      .line({ x: half, y: foot })
      .arc({ x: -half, y: foot }, radius, -1)
      .close(),
    round: pen({ x: -half, y: crest + fall })
      .arc({ x: half, y: crest + fall }, radius, 1)
      .line({ x: half, y: crest + foot })
      .line({ x: -half, y: crest + foot })
      .close(),
  };
};

const draw = ({ radius, of, long }: Wanted, job: Settled): Drawing => {
  const chord = Math.min(Math.max(long, SHORTEST), LONGEST * radius);
  const half = chord / 2;
  const fall = sagitta(radius, chord);
  const { hollow, round } = gaugePaths(radius, half, fall);
  const foot = BODY + fall;
  const crest = foot + APART;
  const bottom = crest + foot;
  const inUnit = (unit: 'mm' | 'in') => formatQuantity(radius, 'radius', { ...job.show, radius: unit }, { unit: true });
  const name = `R ${inUnit('mm')} · ${inUnit('in')}`;
  const within = (id: string, y: number, text: string, bold: boolean): Mark =>
    note(id, { x: 0, y }, [text], { bold, scale: bold ? 1 : 0.8 });
  const marks: readonly Mark[] = [
    stroke('inside', hollow, { line: 'outline', purpose: 'cut' }),
    stroke('outside', round, { line: 'outline', purpose: 'cut' }),
    within('inside.name', 6.2, name, true),
    within('inside.use', 11.2, 'inside: lay it on a crown', false),
    within('outside.name', bottom - 7.4, name, true),
    within('outside.use', bottom - 2.4, 'outside: lay it in a hollow', false),
    upright('inside.sagitta', { x: 0, y: BODY }, { x: half, y: foot }, half, 3, undefined, [fixedLength(fall)]),
    upright('outside.sagitta', { x: 0, y: crest }, { x: half, y: crest + fall }, half, 3, undefined, [
      fixedLength(fall),
    ]),
    across('chord', { x: -half, y: bottom }, { x: half, y: bottom }, bottom, 2.6),
    ...notesUnder(bottom, 4.4, [
      ...(of.length > 0 ? ([['of', [of.join(', ')]]] as const) : []),
      ['proof', ['sagitta ', fixedLength(fall), ' over ', length(chord), ', by caliper']],
    ]),
  ];
  return { id: `radius-gauge-${named(radius)}`, title: `Radius gauge ${inUnit('mm')} · ${inUnit('in')}`, marks };
};

/** Gauges of the job's own radii, and of those that the bench wants besides: each radius hollow and round. A straight edge is laid where a job says “flat”: no gauge is drawn for it. */
export const radiusGauges: ManyPiece = {
  id: 'radius-gauge',
  title: 'Radius gauges',
  faceUp: 'either',
  use: 'Saw and file the edge, prove its sagitta by caliper, and lay it on the board, the bridge’s top, the crown or the dome.',
  usually: 0,
  draw: (job, design, shop) => allWanted(job, design, shop).map((one) => draw(one, job)),
};
