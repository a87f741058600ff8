import fc from 'fast-check';
import { withAlternative } from '../geometry/alternatives.ts';
import { fieldAt } from '../geometry/fields.ts';
import type { Job } from '../geometry/job.ts';
import { randomOutline } from './random-outline.ts';
import { randomStrings } from './random-strings.ts';
import { jobFile, workedExampleFile } from './solved.ts';

const from = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const or = (word: string, number: fc.Arbitrary<number>) => fc.oneof(fc.constant(word), number);

/** Values that stand by themselves: mostly constructible, some not. */
const plain = {
  hand: fc.constantFrom('right', 'left'),
  'show.length': fc.constantFrom('mm', 'in', 'fraction'),
  'show.sectionAcross': from(-70, 70),
  'show.sectionAlong': or('saddle', from(0, 40)),
  'guitar.scale': from(560, 700),
  'guitar.neckPlaneHeight': from(8, 13),
  'guitar.rise': from(0, 2),
  'guitar.relief': from(0, 0.4),
  'guitar.topRadius': or('flat', from(3000, 20000)),
  'top.radiusAlong': or('flat', from(4000, 20000)),
  'action.bass': from(1.8, 4),
  'action.treble': from(1.4, 3.2),
  'strings.setbacks': fc.constantFrom('typed', 'typed', 'computed', 'heard'),
  'strings.spacing': fc.constantFrom('centres', 'gaps', 'centres', 'typed'),
  'bridge.footprint': fc.constantFrom('belly', 'bellyBefore', 'rectangle', 'pyramid', 'waisted', 'free'),
  'bridge.ends': fc.constantFrom('square', 'eased', 'round'),
  'bridge.cornerRadius': from(0.2, 20),
  'bridge.pyramidWidth': from(6, 22),
  'bridge.pyramidThickness': from(4, 9),
  'bridge.frontToSaddle': from(7, 16),
  'bridge.thickness': from(6, 11),
  'bridge.topRadius': or('flat', from(250, 1000)),
  'bridge.tilt': from(-0.01, 0.01),
  'bridge.tipThickness': from(2, 5),
  'bridge.tipTreble': or('same', from(2, 5)),
  'bridge.wing': fc.constantFrom('hollow', 'straight', 'round', 'ogee'),
  'bridge.scoop': or('level', from(20, 400)),
  'bridge.shoulder': or('sharp', from(0.5, 40)),
  'bridge.edge': fc.constantFrom('square', 'round', 'chamfer'),
  'bridge.edgeSize': from(0.2, 4),
  'slot.width': from(2.2, 6.5),
  'slot.depth': from(3, 6),
  'slot.ends': fc.constantFrom('round', 'square', 'through'),
  'slot.floor': fc.constantFrom('level', 'dome'),
  'slot.line': fc.constantFrom('least', 'outer', 'typed'),
  'slot.slant': from(-0.06, 0),
  'saddle.crown': fc.constantFrom('best', 'gauge', 'heights'),
  'saddle.play': from(0, 0.2),
  'saddle.under': fc.constantFrom(0, 0, 1.2),
  'saddle.wireHole': or('none', from(1, 2.5)),
  'saddle.wireAcross': from(-25, 25),
  'pins.hold': fc.constantFrom('pins', 'pins', 'tied', 'behind'),
  'pins.row': fc.constantFrom('square', 'slanted', 'arc'),
  'pins.arcRise': from(-5, 5),
  'pins.secondRow': from(7, 13),
  'pins.secondAside': from(2, 7),
  'pins.fromSaddle': from(8, 16),
  'pins.below': from(0, 4),
  'pins.ramp': or('none', from(0.5, 4)),
  'pins.rampDepth': from(0.3, 3),
  'pins.hole': from(4, 6),
  'pins.pinDiameter': from(4.5, 6),
  'pins.taper': from(0.02, 0.08),
  'pins.leaves': or('pins', from(4, 12)),
  'plate.cap': or('none', from(1, 3)),
  'plate.length': from(60, 120),
  'plate.depth': from(15, 35),
  'plate.grain': fc.constantFrom('across', 'along', 'slanted'),
  'scar.outline': fc.constantFrom('none', 'belly', 'bellyBefore', 'rectangle'),
  'scar.length': from(120, 170),
  'scar.depth': from(28, 42),
  'stock.allowance': from(0, 6),
};

/** Values that hang on others: what is drawn is how far they lie from those. */
const hanging = {
  isNewBridge: fc.constantFrom(true, true, true, false),
  slotBeyond: from(8, 26),
  deckBeyond: from(0, 26),
  wings: from(8, 45),
  behindPins: from(4, 22),
  tips: from(0.5, 0.95),
  belly: from(0.4, 1),
  waist: from(0.55, 0.98),
  pinsWider: from(-3, 3),
  fromNut: from(0.5, 4),
  isMirrored: fc.boolean(),
};

type Values = Readonly<Record<string, unknown>>;
type Bounds = { readonly min?: number | undefined; readonly max?: number | undefined };

/** What each field takes, asked once. */
const bounds = new Map<string, Bounds>();

/** No less and no more than the field takes. */
const taken = (path: string, value: unknown): unknown => {
  if (typeof value !== 'number') return value;
  const field = bounds.get(path) ?? fieldAt(path) ?? {};
  bounds.set(path, field);
  const { min = value, max = value } = field;

  return Math.min(max, Math.max(min, value));
};

/** The job with values put in by paths of a group's field, or of the job's own. */
const put = (job: Job, values: Values): Job => {
  const changed: Record<string, unknown> = { ...job };
  const groups = new Map<string, Record<string, unknown>>();
  for (const [path, value] of Object.entries(values)) {
    const [head = '', field] = path.split('.');
    if (field === undefined) {
      changed[head] = value;
      continue;
    }
    const group = groups.get(head) ?? { ...(changed[head] as Values) };
    group[field] = taken(path, value);
    groups.set(head, group);
  }
  return { ...changed, ...Object.fromEntries(groups) } as unknown as Job;
};

const base = jobFile(workedExampleFile);

/** A bridge that a bench could meet, of every style and with every field's choices drawn anew: mostly constructible, some not. */
export const randomJob = (): fc.Arbitrary<Job> =>
  fc
    .record({
      values: fc.record(plain),
      hangs: fc.record(hanging),
      strings: randomStrings,
      mirrored: randomOutline(true),
      lopsided: randomOutline(false),
      places: fc.array(fc.record({ x: from(-40, 40), y: from(-8, 30), size: from(1, 8), how: fc.nat(3) }), {
        maxLength: 4,
      }),
      others: fc.array(
        fc.record({
          'bridge.thickness': plain['bridge.thickness'],
          'bridge.topRadius': plain['bridge.topRadius'],
          'slot.depth': plain['slot.depth'],
          'saddle.crown': plain['saddle.crown'],
          'pins.fromSaddle': plain['pins.fromSaddle'],
        }),
        { maxLength: 2 },
      ),
    })
    .map(({ values, hangs, strings, mirrored, lopsided, places, others }) => {
      const { isNewBridge, isMirrored } = hangs;
      const isPaired = strings.courses === 'pairs' && values['pins.hold'] === 'pins';
      const slot = strings.spread + values['slot.width'] + hangs.slotBeyond;
      const deck = slot + hangs.deckBeyond;
      const length = Math.min(260, Math.max(60, deck + 2 * hangs.wings));
      const rows = values['pins.fromSaddle'] + (isPaired ? values['pins.secondRow'] : 0);
      const depth = Math.min(90, values['bridge.frontToSaddle'] + rows + hangs.behindPins);
      const scale = values['guitar.scale'];
      const fromNut = scale + hangs.fromNut;
      const job = put(base, {
        ...values,
        work: isNewBridge ? 'bridge' : 'saddle',
        'strings.courses': strings.courses,
        'strings.list': strings.list,
        'strings.spread': strings.spread,
        'guitar.nutSpread': strings.spread * strings.atNut,
        'slot.length': slot,
        'slot.fromNut': fromNut,
        'bridge.deckWidth': deck,
        'bridge.length': length,
        'bridge.depth': depth,
        'bridge.wingDepth': depth * hangs.tips,
        'bridge.bellyWidth': length * hangs.belly,
        'bridge.waistDepth': depth * hangs.waist,
        'bridge.waistWidth': length * hangs.belly,
        'bridge.mirrored': isMirrored ? 'yes' : 'no',
        'bridge.points': (isMirrored ? mirrored : lopsided)(length, depth),
        'pins.spread': strings.spread + hangs.pinsWider + (isPaired ? values['pins.secondAside'] : 0),
        'scar.fromNut': fromNut - values['bridge.frontToSaddle'],
        'scar.wingDepth': values['scar.depth'] * hangs.tips,
        'scar.bellyWidth': values['scar.length'] * hangs.belly,
        'top.holes': places.map(({ x, y, size, how }, k) => ({
          id: `hole-${k + 1}`,
          what: ['pin', 'screw', 'other', 'pin'][how],
          across: x,
          fromNut: scale + 12 + y / 4,
          diameter: size,
          plan: ['keep', 'plug', 'move', 'register'][how],
        })),
        'top.rises': places.map(({ x, y, size }, k) => ({
          id: `rise-${k + 1}`,
          across: x,
          fromNut: scale + y,
          height: (size - 4) / 10,
        })),
        'top.braces': places.slice(0, 2).map(({ x, y, size }, k) => ({
          id: `brace-${k + 1}`,
          name: 'brace',
          across: -x - 50,
          fromNut: scale + y,
          acrossTo: x + 50,
          fromNutTo: scale + 40 - y,
          width: size + 2,
        })),
      });
      return others.reduce((so, other, k) => withAlternative(so, `other ${k + 1}`, put(so, other)), job);
    });
