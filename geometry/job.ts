import * as z from 'zod/mini';
import { jobFormat, jobVersion } from './job-format.ts';
import { action } from './schema/action.ts';
import { alternatives } from './schema/alternatives.ts';
import { bridge } from './schema/bridge.ts';
import { choice, type Known, text, words } from './schema/field.ts';
import { guitar } from './schema/guitar.ts';
import { limits } from './schema/limits.ts';
import { pins } from './schema/pins.ts';
import { plate } from './schema/plate.ts';
import { saddle } from './schema/saddle.ts';
import { scar } from './schema/scar.ts';
import { setup } from './schema/setup.ts';
import { show } from './schema/show.ts';
import { slot } from './schema/slot.ts';
import { stock } from './schema/stock.ts';
import { strings } from './schema/strings.ts';
import { strung } from './schema/strung.ts';
import { top } from './schema/top.ts';

export { jobFormat, jobVersion } from './job-format.ts';
export { type FieldWords, keyPattern, notTaken, words } from './schema/field.ts';
export { stringCount } from './schema/strings.ts';

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
  work: choice(
    'Work',
    'A new bridge with its saddle; or a new saddle only, where the bridge stays: then its numbers are those of the bridge as it is.',
    { bridge: 'a new bridge', saddle: 'a new saddle only' },
    'bridge',
  ),
  guitar,
  strung,
  action,
  strings,
  bridge,
  slot,
  saddle,
  pins,
  plate,
  scar,
  top,
  stock,
  limits,
  setup,
  alternatives,
});

export type Job = Known<z.infer<typeof jobSchema>>;
export type JobString = Job['strings']['list'][number];
export type Alternative = Job['alternatives']['list'][number];
