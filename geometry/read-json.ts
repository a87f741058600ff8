import { cleanName } from './names.ts';
import type { Problem } from './problem.ts';

/** The longest file of one job, in UTF-16 units. */
export const longestFile = 2_000_000;
const deepest = 50;

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

/** Values nested too deeply (or for ever), and keys that would reach an object's prototype, told by their path. */
export function traps(value: unknown, path: readonly string[]): Problem[] {
  if (typeof value !== 'object' || value === null) return [];
  const at = path.join('.');
  if (path.length > deepest) {
    return [{ path: at, value: '…', says: `The values are nested more than ${deepest} deep; a job never is.` }];
  }
  return Object.entries(value).flatMap(([key, part]) =>
    key === '__proto__'
      ? [
          {
            path: [...path, key].join('.'),
            value: '…',
            says: 'A key may not be called “__proto__”; take it out of the file.',
          },
        ]
      : traps(part, [...path, key]),
  );
}

/**
 * The path of the first key that stands twice in one group of a text that is JSON: the parser would take the last one and say nothing of the other (RFC 8259, 4). Read mark by mark, so that it costs
 * no stack.
 */
function repeatedKey(json: string): string | undefined {
  /** For each open bracket: its keys so far, or none for a list; and where in it the text is. */
  const open: { readonly keys: Set<string> | undefined; at: string; index: number }[] = [];
  let isKey = false;
  for (let i = 0; i < json.length; i++) {
    const mark = json[i];
    const here = open.at(-1);
    if (mark === '{' || mark === '[') {
      open.push({ keys: mark === '{' ? new Set() : undefined, at: mark === '[' ? '0' : '', index: 0 });
      isKey = mark === '{';
    } else if (mark === '}' || mark === ']') {
      open.pop();
      isKey = false;
    } else if (mark === ',' && here) {
      isKey = here.keys !== undefined;
      if (here.keys === undefined) {
        here.index += 1;
        here.at = String(here.index);
      }
    } else if (mark === '"') {
      const from = i;
      for (i++; json[i] !== '"'; i++) if (json[i] === '\\') i++;
      if (!isKey || here?.keys === undefined) continue;
      // As the parser reads it: the same key may be written in several ways.
      const key = String(JSON.parse(json.slice(from, i + 1)));
      here.at = key;
      if (here.keys.has(key)) return open.map(({ at }) => at).join('.');
      here.keys.add(key);
      isKey = false;
    }
  }
  return undefined;
}

/** The value that a JSON text holds, or why there is none. */
export type ReadJson =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: Problem };

/** Reads a file's text as JSON; `what` it should be, such as a job, is said of one that is not. Never throws, and costs no stack for a hostile one. */
export function readJson(text: string, what: string, longest = longestFile): ReadJson {
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
  if (repeated === undefined) return { ok: true, value };
  const path = repeated.length > 80 ? `${repeated.slice(0, 80)}…` : repeated;
  const says = `${cleanName(path)} stands twice in the file, and only one of the two can be meant. Take one out.`;
  return { ok: false, problem: { path, value: '…', says } };
}
