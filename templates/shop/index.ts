import * as z from 'zod/mini';
import { keyPattern } from '../../geometry/job.ts';
import { refusal } from '../../geometry/job-words.ts';
import { quote } from '../../geometry/names.ts';
import type { Problem } from '../../geometry/problem.ts';
import { cut, faultsIn, readJson, shownPath } from '../../geometry/read-json.ts';
import type { Known } from '../../geometry/schema/field.ts';
import { jsonSchemaOf } from '../../geometry/schema/json-schema.ts';
import {
  filledIn,
  inOrder,
  presets,
  problemAt,
  problemsOf,
  repeatedKeys,
  unknownKeys,
} from '../../geometry/schema-walk.ts';
import { caul } from './caul.ts';
import { cutter } from './cutter.ts';
import { gauges } from './gauges.ts';
import { mask } from './mask.ts';
import { paper } from './paper.ts';
import { printers } from './printers.ts';
import { router } from './router.ts';
import { sections } from './sections.ts';

/*
 * The shop's own settings: papers, printers and tools. They belong to a bench, not to a job, and stay when the job is done. The app keeps them on the
 * device; the command reads them from a file.
 */

export const shopFormat = 'sagitta-shop';
export const shopVersion = 1;

const copiesWords = { label: 'Copies', help: '', kind: 'count', min: 0, max: 99 } as const;

/** All that a shop's settings hold, a file a group beside this one. Lengths in mm. A field needs a preset: what a file lacks is put in at it. */
export const shopSchema = z.looseObject({
  format: z.literal(shopFormat),
  version: z.literal(shopVersion),
  /** How many of each piece, by its id; a piece that is not named here comes in its usual number. */
  copies: z.record(
    z.string().check(z.maxLength(40), z.regex(keyPattern)),
    z.int().check(z.gte(copiesWords.min), z.lte(copiesWords.max)),
  ),
  paper,
  cutter,
  router,
  mask,
  sections,
  caul,
  printers,
  gauges,
});

export type Shop = Omit<Known<z.infer<typeof shopSchema>>, 'copies'> & {
  readonly copies: Readonly<Record<string, number>>;
};

export type ReadShop =
  | { readonly ok: true; readonly shop: Shop; readonly unknown: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const mostProblems = 50;
/** The longest settings file, in UTF-16 units: a hundred printers with all their readings fit in. */
const longestShop = 2_000_000;
type Bag = Readonly<Record<string, unknown>>;
const isBag = (value: unknown): value is Bag => typeof value === 'object' && value !== null && !Array.isArray(value);
const refuse = (problems: readonly Problem[]): ReadShop => ({ ok: false, problems: problems.slice(0, mostProblems) });
const refuseFor = (path: string, value: unknown, says: string): ReadShop => refuse([{ path, value: cut(value), says }]);

/** What is wrong in a shop's settings at a place of its own: how many of a piece there are, by a key that is nobody's field. */
const copiesProblem = (path: readonly PropertyKey[], whole: unknown): Problem | undefined => {
  if (path[0] !== 'copies' || path.length !== 2) return undefined;
  const key = String(path[1]);
  const value = isBag(whole) && isBag(whole.copies) ? whole.copies[key] : undefined;
  const says = keyPattern.test(key)
    ? refusal(`Copies (copies.${key})`, copiesWords, value)
    : `The copies name a piece ${quote(key)}; a piece’s name has 1 to 40 characters that can be seen, without blanks, full stops and asterisks. Take it out.`;
  return { path: shownPath(`copies.${key}`), value: cut(value), says };
};

/** A shop nobody has set up yet: everything at its preset. */
export const newShop = (): Shop =>
  inOrder(shopSchema, {
    ...(presets(shopSchema) as object),
    format: shopFormat,
    version: shopVersion,
    copies: {},
  }) as Shop;

/** A plain value as a shop's settings; what it lacks is put in at its preset. Keys that nobody knows are told and kept. */
export function validateShop(value: unknown): ReadShop {
  if (!isBag(value) || value.format !== shopFormat)
    return refuseFor(
      '',
      isBag(value) ? value.format : value,
      `These are no settings of a shop: they would say "format": "${shopFormat}" of themselves${isBag(value) && typeof value.format === 'string' ? `, but say ${quote(value.format)}` : ''}. Choose a file that Sagitta saved.`,
    );
  const { traps, infinities } = faultsIn(value);
  if (traps.length > 0) return refuse(traps);
  const { version = shopVersion } = value;
  if (version !== shopVersion)
    return refuseFor(
      'version',
      version,
      Number.isSafeInteger(version) && Number(version) > shopVersion
        ? `The settings were written by a newer Sagitta, in version ${version} of their format; this one reads version ${shopVersion}. Open them with a newer Sagitta.`
        : `The settings’ version is ${Number.isFinite(version) ? version : 'not given as a number'}; Sagitta reads version ${shopVersion}.`,
    );
  const whole = filledIn(shopSchema, { copies: {}, ...value, version });
  const read = z.safeParse(shopSchema, whole);
  if (!read.success)
    return refuse(
      problemsOf(
        read.error.issues,
        mostProblems,
        (path) => copiesProblem(path, whole) ?? problemAt(shopSchema, whole, path),
      ),
    );
  const repeated = repeatedKeys(shopSchema, whole, []);
  if (repeated.length > 0) return refuse(repeated);
  if (infinities.length > 0) return refuse(infinities);
  return { ok: true, shop: read.data as Shop, unknown: unknownKeys(shopSchema, whole) };
}

/** Reads a settings file's text. What it is not is said first; then every problem in it. Never throws. */
export function readShop(text: string): ReadShop {
  const read = readJson(text, 'settings', { longest: longestShop });
  return read.ok ? validateShop(read.value) : refuse([read.problem]);
}

/** A settings file's text: JSON by the line, in the schema's order, unknown keys last; it ends in a line break. */
export const writeShop = (shop: Shop): string => `${JSON.stringify(inOrder(shopSchema, shop), null, 2)}\n`;

/** The JSON Schema (draft 2020-12) of a settings file, with each field's label, help and preset. */
export const shopJsonSchema = (): Readonly<Record<string, unknown>> =>
  jsonSchemaOf(shopSchema, 'Sagitta shop settings', 'Lengths in mm.');
