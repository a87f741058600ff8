import * as z from 'zod/mini';
import type { QuantityKind } from './units.ts';

// The schema library must never compile code at run time: a strict content security policy forbids it.
z.config({ jitless: true });

/** What people need to know of one field: its word, what it means and how it is taken. The types come from the schema itself. */
export interface FieldWords {
  readonly label: string;
  readonly help: string;
  /** How a number is typed and shown; `word` is a choice, `text` free text. */
  readonly kind: QuantityKind | 'word' | 'text';
  /** Least and greatest number allowed, in stored units. */
  readonly min?: number;
  readonly max?: number;
  /** The usual range [practice], in stored units: said, never enforced. */
  readonly usual?: readonly [number, number];
  /** A word that may stand in place of the number. */
  readonly word?: string;
  /** What each choice is called. */
  readonly choices?: Readonly<Record<string, string>>;
  /** Longest text, in UTF-16 units. */
  readonly longest?: number;
  /** What may stand here, for a text that is more than free text: goes on from “it may be”. */
  readonly allows?: string;
  /** What a new job starts from. */
  readonly preset?: number | string;
  /** The field counts only while another one, of the same string where that is a string's, holds this word, or any but this. */
  readonly only?: { readonly path: string } & ({ readonly is: string } | { readonly isNot: string });
}

/** The words of every field, kept beside the one schema and keyed by it. */
export const words = z.registry<FieldWords>();

type NumberWords = Omit<FieldWords, 'kind' | 'word' | 'choices' | 'longest'> & {
  kind: QuantityKind;
  min: number;
  max: number;
};

const number = (w: NumberWords) => {
  const base = w.kind === 'count' ? z.int() : z.number();
  return base.check(z.gte(w.min), z.lte(w.max)).register(words, w);
};

const numberOr = <const W extends string>(word: W, w: NumberWords) => {
  const schema = z.union([z.literal(word), z.number().check(z.gte(w.min), z.lte(w.max))]);
  words.add(schema, { ...w, word });
  return schema;
};

const choice = <const C extends Readonly<Record<string, string>>>(
  label: string,
  help: string,
  choices: C,
  preset: keyof C & string,
  only?: FieldWords['only'],
) =>
  z
    .enum(Object.keys(choices) as [keyof C & string, ...(keyof C & string)[]])
    .register(words, { label, help, kind: 'word', choices, preset, ...(only && { only }) });

const text = (label: string, help: string, longest: number, preset: string) =>
  z.string().check(z.maxLength(longest)).register(words, { label, help, kind: 'text', longest, preset });

const lengthUnits = { mm: 'mm', in: 'inch', fraction: '1/64 in' } as const;

const show = z.looseObject({
  length: choice(
    'Lengths in',
    'The unit in which lengths are shown, and in which a bare number is read.',
    lengthUnits,
    'mm',
  ),
  radius: choice(
    'Radii in',
    'The unit in which radii are shown, and in which a bare number is read.',
    lengthUnits,
    'in',
  ),
  gauge: choice(
    'String gauges in',
    'The unit in which string diameters are shown, and in which a bare number is read.',
    lengthUnits,
    'in',
  ),
});

const guitar = z.looseObject({
  scale: number({
    label: 'Scale length',
    help: 'Twice the distance from the nut’s front edge to the crown of fret 12, along the centre line. Never taken from the old saddle.',
    kind: 'length',
    min: 300,
    max: 1000,
    usual: [610, 660],
    preset: 640,
  }),
  frets: number({
    label: 'Frets',
    help: 'How many frets the board has; the board’s end radius is taken at the last one.',
    kind: 'count',
    min: 12,
    max: 30,
    preset: 20,
  }),
  bodyJoint: number({
    label: 'Body joint at fret',
    help: 'The fret at which neck and body meet.',
    kind: 'count',
    min: 9,
    max: 24,
    preset: 14,
  }),
  boardRadiusNut: numberOr('flat', {
    label: 'Board radius at the nut',
    help: 'Read with a radius gauge across the crowns of the first frets, strings off or between the strings. “flat” for a flat board.',
    kind: 'radius',
    min: 50,
    max: 5000,
    usual: [184.15, 508],
    preset: 355.6,
  }),
  boardRadiusEnd: numberOr('flat', {
    label: 'Board radius at the end',
    help: 'Read across the last fret. The same as at the nut for a cylinder; larger on a compound board.',
    kind: 'radius',
    min: 50,
    max: 5000,
    usual: [184.15, 508],
    preset: 355.6,
  }),
  nutSpread: number({
    label: 'String spread at the nut',
    help: 'Centre to centre, outer string to outer string, at the nut’s front edge.',
    kind: 'length',
    min: 15,
    max: 100,
    usual: [34, 48],
    preset: 36.5,
  }),
  neckPlaneHeight: number({
    label: 'Straightedge to top',
    help: 'Neck plane height: a straightedge on the frets, carried over the bridge; from its underside down to the bare top at the saddle line. Strings off, neck set straight.',
    kind: 'length',
    min: 1,
    max: 40,
    usual: [8, 12],
    preset: 10,
  }),
  rise: number({
    label: 'Rise under tension',
    help: 'How much the neck plane height shrinks when the strings are brought to pitch, neck and top together.',
    kind: 'length',
    min: -2,
    max: 6,
    usual: [0.3, 1.5],
    preset: 0.5,
  }),
  topRadius: numberOr('flat', {
    label: 'Top’s dome radius',
    help: 'The radius of the top’s dome across the guitar where the bridge sits; the bridge’s underside follows it. “flat” if there is none.',
    kind: 'radius',
    min: 500,
    max: 50000,
    usual: [4500, 16000],
    preset: 7600,
  }),
  relief: number({
    label: 'Relief',
    help: 'The largest gap between the fret crowns and a straightedge laid from fret 1 to the body joint, at pitch.',
    kind: 'length',
    min: 0,
    max: 2,
    usual: [0.1, 0.3],
    preset: 0.15,
  }),
});

const action = z.looseObject({
  bass: number({
    label: 'Action, bass',
    help: 'Underside of the open bass string to the crown of fret 12, as wanted in the end.',
    kind: 'length',
    min: 0.5,
    max: 8,
    usual: [2, 2.8],
    preset: 2.5,
  }),
  treble: number({
    label: 'Action, treble',
    help: 'Underside of the open treble string to the crown of fret 12, as wanted in the end.',
    kind: 'length',
    min: 0.5,
    max: 8,
    usual: [1.5, 2.2],
    preset: 1.9,
  }),
  firstFretBass: number({
    label: 'First-fret clearance, bass',
    help: 'Underside of the open bass string to the crown of fret 1, as wanted in the end.',
    kind: 'length',
    min: 0,
    max: 3,
    usual: [0.3, 0.6],
    preset: 0.45,
  }),
  firstFretTreble: number({
    label: 'First-fret clearance, treble',
    help: 'Underside of the open treble string to the crown of fret 1, as wanted in the end.',
    kind: 'length',
    min: 0,
    max: 3,
    usual: [0.3, 0.6],
    preset: 0.3,
  }),
});

const bridge = z.looseObject({
  footprint: choice(
    'Footprint',
    'The outline of the bridge on the top. It has to cover the old bridge’s scar.',
    { belly: 'belly', rectangle: 'rectangular' },
    'belly',
  ),
  length: number({
    label: 'Length across',
    help: 'From wing tip to wing tip, across the guitar.',
    kind: 'length',
    min: 60,
    max: 260,
    usual: [140, 185],
    preset: 152,
  }),
  depth: number({
    label: 'Depth',
    help: 'From the front edge to the rearmost point of the footprint, along the guitar.',
    kind: 'length',
    min: 12,
    max: 90,
    usual: [25, 42],
    preset: 38.5,
  }),
  wingDepth: number({
    label: 'Depth at the tips',
    help: 'A belly bridge’s depth along the guitar at its wing tips.',
    kind: 'length',
    min: 8,
    max: 80,
    usual: [22, 30],
    preset: 24,
    only: { path: 'bridge.footprint', is: 'belly' },
  }),
  bellyWidth: number({
    label: 'Belly width',
    help: 'How wide the belly is across the guitar, from where its curve leaves the straight rear edge to the same place on the other side.',
    kind: 'length',
    min: 20,
    max: 260,
    usual: [80, 150],
    preset: 140,
    only: { path: 'bridge.footprint', is: 'belly' },
  }),
  frontToSaddle: number({
    label: 'Front edge to saddle line',
    help: 'From the bridge’s front edge back to the middle of the slot, on the centre line.',
    kind: 'length',
    min: 3,
    max: 60,
    usual: [8, 14],
    preset: 9.6,
  }),
  thickness: number({
    label: 'Thickness, centre',
    help: 'At the middle of the bridge, from its underside to its top, on the centre line.',
    kind: 'length',
    min: 2,
    max: 30,
    usual: [7, 10.5],
    preset: 9.3,
  }),
  topRadius: numberOr('flat', {
    label: 'Bridge top radius',
    help: 'The radius a gauge reads across the bridge’s upper surface.',
    kind: 'radius',
    min: 50,
    max: 5000,
    usual: [254, 762],
    preset: 508,
  }),
  tilt: number({
    label: 'Tilt',
    help: 'How much higher the treble end of the deck stands than the bass end, taken over 100 mm across; negative if the bass stands higher.',
    kind: 'slope',
    min: -0.05,
    max: 0.05,
    preset: 0,
  }),
  deckWidth: number({
    label: 'Deck width',
    help: 'How wide the arched middle is, from the shoulder of one wing to that of the other.',
    kind: 'length',
    min: 20,
    max: 250,
    usual: [70, 110],
    preset: 84,
  }),
  tipThickness: number({
    label: 'Tip thickness',
    help: 'Thickness at the wing tips.',
    kind: 'length',
    min: 0.5,
    max: 20,
    usual: [2.5, 4],
    preset: 3.2,
  }),
  wing: choice(
    'Wings',
    'The line from the deck’s shoulder to the tip.',
    { hollow: 'hollow', straight: 'straight' },
    'hollow',
  ),
});

const slot = z.looseObject({
  width: number({
    label: 'Slot width',
    help: 'Across the slot: the saddle’s thickness.',
    kind: 'length',
    min: 1,
    max: 12,
    usual: [2.3, 3.3],
    preset: 3.2,
  }),
  length: number({
    label: 'Slot length',
    help: 'From end to end along the slot, its round ends included.',
    kind: 'length',
    min: 20,
    max: 200,
    usual: [70, 85],
    preset: 76,
  }),
  depth: number({
    label: 'Slot depth',
    help: 'From the bridge’s top at the centre line down to the slot’s level floor.',
    kind: 'length',
    min: 0.5,
    max: 25,
    usual: [4, 6],
    preset: 5,
  }),
});

const pins = z.looseObject({
  spread: number({
    label: 'Pin spread',
    help: 'Centre to centre, outer pin to outer pin.',
    kind: 'length',
    min: 15,
    max: 200,
    usual: [52, 62],
    preset: 55.5,
  }),
  fromSaddle: number({
    label: 'Saddle line to pins',
    help: 'From the middle of the slot back to the middle of the pin row, on the centre line.',
    kind: 'length',
    min: 3,
    max: 80,
    usual: [9, 16],
    preset: 12.5,
  }),
  row: choice(
    'Pin row',
    'Square to the centre line, or slanted with the slot.',
    { square: 'square', slanted: 'slanted with the slot' },
    'slanted',
  ),
  hole: number({
    label: 'Pin hole',
    help: 'Diameter of the pin holes at the bridge’s top.',
    kind: 'length',
    min: 1,
    max: 12,
    usual: [4.8, 5.8],
    preset: 5,
  }),
  leaves: numberOr('pins', {
    label: 'String leaves the bridge',
    help: 'How far behind its break point each string next touches the bridge. “pins”: at the front edge of its pin hole, as drawn.',
    kind: 'length',
    min: 1,
    max: 80,
    preset: 'pins',
  }),
});

/** A key stands inside paths such as `strings.list.E2.gauge`, so it holds no full stop, blank or asterisk. */
export const keyPattern = /^[^\s.*]+$/;

/** One string, bass first in the list. A job's lists are keyed by `id`, never by position. */
const string = z.looseObject({
  id: z.string().check(z.maxLength(40), z.regex(keyPattern)).register(words, {
    label: 'Key',
    help: 'What keeps this string the same one when the list changes.',
    kind: 'text',
    longest: 40,
    allows: '1 to 40 characters without blanks, full stops and asterisks',
  }),
  name: text('String', 'What the string is called, as a rule its note.', 24, ''),
  pitch: number({
    label: 'Pitch',
    help: 'The open string’s frequency, or its note (A4 = 440 Hz).',
    kind: 'frequency',
    min: 20,
    max: 1500,
  }),
  gauge: number({ label: 'Gauge', help: 'The string’s outside diameter.', kind: 'gauge', min: 0.15, max: 3 }),
  core: numberOr('plain', {
    label: 'Core',
    help: 'Diameter of a wound string’s core; “plain” for a string without a wrap.',
    kind: 'gauge',
    min: 0.1,
    max: 3,
  }),
  material: choice(
    'Material',
    'What a plain string, or a wound one’s core, is made of.',
    { steel: 'steel', nylon: 'nylon', fluorocarbon: 'fluorocarbon' },
    'steel',
  ),
  wrap: choice(
    'Wrap',
    'What a wound string is wrapped with; a plain one has none.',
    { 'phosphor bronze': 'phosphor bronze', 'silvered copper': 'silvered copper', steel: 'steel' },
    'phosphor bronze',
    { path: 'strings.list.*.core', isNot: 'plain' },
  ),
  setback: number({
    label: 'Setback',
    help: 'How far this string’s break point lies beyond the nominal scale length.',
    kind: 'length',
    min: -5,
    max: 20,
    usual: [1.5, 5.5],
  }),
});

/** How many strings a job may have. */
export const stringCount = { min: 4, max: 12 } as const;

const strings = z.looseObject({
  spacing: choice(
    'Spacing',
    'Equal from centre to centre, or with equal gaps between the strings, their own diameters taken out.',
    { centres: 'equal centres', gaps: 'equal gaps' },
    'centres',
  ),
  spread: number({
    label: 'String spread at the saddle',
    help: 'Centre to centre, outer string to outer string, over the saddle’s crown.',
    kind: 'length',
    min: 15,
    max: 200,
    usual: [52, 60],
    preset: 55.5,
  }),
  list: z.array(string).check(z.minLength(stringCount.min), z.maxLength(stringCount.max)),
});

/** What a job file says of itself: that it is one, and how its keys are to be read. */
export const jobFormat = 'sagitta-job';
export const jobVersion = 1;

/** All that a job holds. Lengths in mm, tilt in mm per mm, pitch in Hz. */
export const jobSchema = z.looseObject({
  format: z.literal(jobFormat),
  version: z.literal(jobVersion),
  name: text('Job', 'What this job is called, on screen and on every template.', 200, 'New bridge'),
  date: z.iso.date().register(words, {
    label: 'Date',
    help: 'The day that stands on the templates, as year-month-day.',
    kind: 'text',
    longest: 10,
    allows: 'a day as year-month-day, for example 2026-03-31',
  }),
  hand: choice(
    'Guitar for',
    'A left-handed guitar is drawn mirrored, bass on the right as seen from the front.',
    { right: 'right hand', left: 'left hand' },
    'right',
  ),
  show,
  guitar,
  action,
  strings,
  bridge,
  slot,
  pins,
});

/** Keys that nobody knows are kept in the value, but the type speaks only of those in the schema. */
type Known<T> = T extends readonly (infer U)[]
  ? readonly Known<U>[]
  : T extends object
    ? { readonly [K in keyof T as string extends K ? never : K]: Known<T[K]> }
    : T;

export type Job = Known<z.infer<typeof jobSchema>>;
export type JobString = Job['strings']['list'][number];
