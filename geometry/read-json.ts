import { cleanName } from './names.ts';
import type { Problem } from './problem.ts';

/** The longest file of one job, in UTF-16 units: the fullest that the schema allows has 380,000, and one of this length is read at once. */
export const longestFile = 500_000;
/** How deep the values of a job may lie. */
export const deepestFile = 50;

/** A value cut short for a person. */
export function cut(value: unknown): unknown {
  if (typeof value === 'string') return value.length > 40 ? `${value.slice(0, 40)}…` : value;
  return typeof value === 'object' && value !== null ? '…' : value;
}

/** How deep the brackets of a JSON text nest, counted without reading it, so that a hostile one costs no stack. */
function depthOf(json: string): number {
  let depth = 0;
  let most = 0;
  let inText = false;
  for (let i = 0; i < json.length; i++) {
    const mark = json[i];
    if (inText) {
      if (mark === '\\') i++;
      else if (mark === '"') inText = false;
    } else if (mark === '"') inText = true;
    else if (mark === '[' || mark === '{') most = Math.max(most, ++depth);
    else if (mark === ']' || mark === '}') depth--;
  }
  return most;
}

/** Where a JSON parser stopped, as far as its message tells. */
function placeIn(text: string, error: unknown): string {
  const message = error instanceof Error ? error.message : '';
  const named = /line (\d+),? column (\d+)/.exec(message);
  if (named) return ` at line ${named[1]}, column ${named[2]}`;
  const position = /position (\d+)/.exec(message);
  if (!position) return '';
  const before = text.slice(0, Number(position[1])).split('\n');
  return ` at line ${before.length}, column ${(before.at(-1) ?? '').length + 1}`;
}

/** A path that a file made up, as it may stand before a person: cleaned, and cut where it is long. */
export const shownPath = (path: string): string => {
  const clean = cleanName(path.slice(0, 400));
  if (clean === '') return '“”';
  return clean.length > 80 ? `${cleanName(clean.slice(0, 80))}…` : clean;
};

/** At most so many of a kind are told: more say nothing new. */
const mostTold = 50;

/** What no plain value from a file may hold. */
export interface Faults {
  /** Values nested too deeply (or for ever), and keys that would reach an object's prototype: nothing else may be done with such a value. */
  readonly traps: readonly Problem[];
  /** Numbers beyond all that can be kept, such as 1e999: JSON allows them, but reads them as infinite and cannot write that (RFC 8259, 6). */
  readonly infinities: readonly Problem[];
}

/** The faults of a plain value, told by their path; of each kind 50 at most. */
export function faultsIn(value: unknown): Faults {
  const traps: Problem[] = [];
  const infinities: Problem[] = [];
  walk(value, [], (part, at) => {
    if (part === Number.POSITIVE_INFINITY || part === Number.NEGATIVE_INFINITY) {
      const path = shownPath(at.join('.'));
      const says = `${path} is a number too large to be kept; those up to 1.7e308 are. Write it smaller, or take it out.`;
      if (infinities.length < mostTold) infinities.push({ path, value: part, says });
      return 'on';
    }
    const says =
      at[at.length - 1] === '__proto__'
        ? 'A key may not be called “__proto__”; take it out of the file.'
        : at.length > deepestFile && typeof part === 'object' && part !== null
          ? `The values are nested more than ${deepestFile} deep; a job never is.`
          : undefined;
    if (says === undefined) return 'on';
    traps.push({ path: shownPath(at.join('.')), value: '…', says });
    return traps.length === mostTold ? 'stop' : 'past';
  });
  return { traps, infinities };
}

/** Goes through a value and all that is in it; `look` says whether to go on into this part, past it, or to stop for good. The path is one list that changes on the way. */
function walk(
  value: unknown,
  at: (string | number)[],
  look: (part: unknown, at: readonly (string | number)[]) => 'on' | 'past' | 'stop',
): boolean {
  const next = look(value, at);
  if (next !== 'on' || typeof value !== 'object' || value === null) return next !== 'stop';
  // A list is counted through: its places as texts would cost more than all else.
  const keys = Array.isArray(value) ? undefined : Object.keys(value);
  const length = keys?.length ?? (value as readonly unknown[]).length;
  for (let k = 0; k < length; k++) {
    const key = keys === undefined ? k : (keys[k] ?? '');
    at.push(key);
    const goesOn = walk((value as Readonly<Record<string | number, unknown>>)[key], at, look);
    at.pop();
    if (!goesOn) return false;
  }
  return true;
}

/**
 * The path of the first key that stands twice in one group of a text that is JSON: the parser would take the last one and say nothing of the other (RFC 8259, 4). Read mark by mark, so that it costs
 * no stack, and a time that grows with the text and no faster.
 */
function repeatedKey(json: string): string | undefined {
  /** For each open bracket, from the outermost: the keys so far of a group, none of a list; and the last key, or the place in the list. */
  const keys: (Set<string> | undefined)[] = [];
  const at: (string | number)[] = [];
  let deep = -1;
  let isKey = false;
  for (let i = 0; i < json.length; i++) {
    const mark = json[i];
    if (mark === '"') {
      const from = i;
      let isEscaped = false;
      for (i++; json[i] !== '"'; i++) {
        if (json[i] !== '\\') continue;
        isEscaped = true;
        i++;
      }
      const known = keys[deep];
      if (!isKey || known === undefined) continue;
      // As the parser reads it: the same key may be written in several ways.
      const key = isEscaped ? String(JSON.parse(json.slice(from, i + 1))) : json.slice(from + 1, i);
      at[deep] = key;
      if (known.has(key)) return at.slice(0, deep + 1).join('.');
      known.add(key);
      isKey = false;
    } else if (mark === '{' || mark === '[') {
      isKey = mark === '{';
      deep += 1;
      keys[deep] = isKey ? new Set() : undefined;
      at[deep] = isKey ? '' : 0;
    } else if (mark === '}' || mark === ']') {
      deep -= 1;
      isKey = false;
    } else if (mark === ',') {
      isKey = keys[deep] !== undefined;
      if (!isKey) at[deep] = Number(at[deep]) + 1;
    }
  }
  return undefined;
}

/** A value just read, with 0 for each −0 in it: they mean the same, and a file written keeps no difference between them (ECMA-262, JSON.stringify). */
function withoutMinusZero(value: unknown): unknown {
  if (Object.is(value, -0)) return 0;
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) {
    for (let k = 0; k < value.length; k++) value[k] = withoutMinusZero(value[k]);
    return value;
  }
  const bag = value as Record<string, unknown>;
  for (const key of Object.keys(bag)) {
    const part = bag[key];
    if (typeof part === 'object') withoutMinusZero(part);
    // A key of any name, so not by assignment, which would reach the prototype.
    else if (Object.is(part, -0))
      Object.defineProperty(bag, key, { value: 0, configurable: true, enumerable: true, writable: true });
  }
  return value;
}

/** The value that a JSON text holds, or why there is none. */
export type ReadJson =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: Problem };

/** Reads a file's text as JSON; `what` it should be, such as a job, is said of one that is not. Never throws, and costs no stack for a hostile one. */
export function readJson(text: string, what: string, { longest = longestFile, deepest = deepestFile } = {}): ReadJson {
  const refuse = (value: unknown, says: string): ReadJson => ({ ok: false, problem: { path: '', value, says } });
  const choose = `Choose a ${what} file that Sagitta saved.`;
  if (text.length > longest) {
    return refuse('…', `The file has ${text.length} characters; a ${what} has at most ${longest}. ${choose}`);
  }
  const json = text.replace(/^\uFEFF/, '');
  if (json.trim() === '') return refuse('', `The file is empty. ${choose}`);
  if (depthOf(json) > deepest) {
    return refuse('…', `The file’s brackets nest more than ${deepest} deep; those of a ${what} never do.`);
  }
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch (error) {
    return refuse(json.slice(0, 40), `The file is not JSON: it cannot be read${placeIn(json, error)}. ${choose}`);
  }
  const repeated = repeatedKey(json);
  if (repeated === undefined) return { ok: true, value: json.includes('-0') ? withoutMinusZero(value) : value };
  const path = shownPath(repeated);
  const says = `The key “${path}” stands twice in the file, and only one of the two can be meant. Take one out.`;
  return { ok: false, problem: { path, value: '…', says } };
}
