import * as z from 'zod/mini';
import { keyPattern } from '../../geometry/job.ts';
import type { Problem } from '../../geometry/problem.ts';
import { readJson, traps } from '../../geometry/read-json.ts';
import { filledIn, inOrder, presets, problemAt, repeatedKeys, unknownKeys } from '../../geometry/schema-walk.ts';
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

/** All that a shop's settings hold, a file a group beside this one. Lengths in mm. A field needs a preset: what a file lacks is put in at it. */
export const shopSchema = z.looseObject({
  format: z.literal(shopFormat),
  version: z.literal(shopVersion),
  /** How many of each piece, by its id; a piece that is not named here comes in its usual number. */
  copies: z.record(z.string().check(z.maxLength(40), z.regex(keyPattern)), z.int().check(z.gte(0), z.lte(99))),
  paper,
  cutter,
  router,
  mask,
  sections,
  caul,
  printers,
  gauges,
});

/** Keys that nobody knows are kept in the value, but the type speaks only of those in the schema. */
type Known<T> = T extends readonly (infer U)[]
  ? readonly Known<U>[]
  : T extends object
    ? { readonly [K in keyof T as string extends K ? never : K]: Known<T[K]> }
    : T;

export type Shop = Omit<Known<z.infer<typeof shopSchema>>, 'copies'> & {
  readonly copies: Readonly<Record<string, number>>;
};

export type ReadShop =
  | { readonly ok: true; readonly shop: Shop; readonly unknown: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const mostProblems = 50;
const refuse = (...problems: Problem[]): ReadShop => ({ ok: false, problems: problems.slice(0, mostProblems) });

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
  if (typeof value !== 'object' || value === null || Array.isArray(value) || !('format' in value))
    return refuse({
      path: '',
      value: '…',
      says: `These are no settings of a shop: they would say "format": "${shopFormat}" of themselves. Choose a file that Sagitta saved.`,
    });
  const trapped = traps(value, []);
  if (trapped.length > 0) return refuse(...trapped);
  const { format } = value;
  if (format !== shopFormat)
    return refuse({
      path: 'format',
      value: format,
      says: `The file calls itself ${JSON.stringify(format)?.slice(0, 40)}; a shop’s settings are "${shopFormat}". Choose a file that Sagitta saved.`,
    });
  const whole = filledIn(shopSchema, { version: shopVersion, copies: {}, ...value });
  const read = z.safeParse(shopSchema, whole);
  if (!read.success) {
    const problems = new Map(
      read.error.issues.map(({ path }) => [path.join('.'), problemAt(shopSchema, whole, path)] as const),
    );
    return refuse(...problems.values());
  }
  const repeated = repeatedKeys(shopSchema, whole, []);
  if (repeated.length > 0) return refuse(...repeated);
  const unknown = unknownKeys(shopSchema, whole, []).filter((path) => !path.startsWith('copies.'));
  return { ok: true, shop: read.data as Shop, unknown };
}

/** Reads a settings file's text. What it is not is said first; then every problem in it. Never throws. */
export function readShop(text: string): ReadShop {
  const read = readJson(text, 'settings');
  return read.ok ? validateShop(read.value) : refuse(read.problem);
}

/** A settings file's text: JSON by the line, in the schema's order, unknown keys last; it ends in a line break. */
export const writeShop = (shop: Shop): string => `${JSON.stringify(inOrder(shopSchema, shop), null, 2)}\n`;
