import { expect } from 'vitest';
import type { Problem } from '../../geometry/problem.ts';

/** A check that costs nothing where it holds: a fuzz makes millions. */
export const must = (holds: boolean, says: () => string): void => {
  if (!holds) throw new Error(says());
};

const longest = 400;

const isControl = (text: string): boolean =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for.
  /[\u0000-\u001f\u007f-\u009f\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069]/.test(text);

/** Holds a sentence for a person to be short, and to have nothing in it that would act on a terminal or turn what stands beside it. */
export const mustBeFit = (says: string): void => {
  must(
    says.length > 0 && says.length < longest,
    () => `a sentence has ${says.length} characters: ${says.slice(0, 200)}`,
  );
  must(!isControl(says), () => `a sentence holds control characters: ${JSON.stringify(says)}`);
  must(
    !/undefined|\[object|NaN(?!\))/.test(says.replace(/“[^”]*”/g, '')),
    () => `a sentence names what is none: ${says}`,
  );
};

/** Holds what is said of a refused file to name the place or what is wrong. */
export const mustSay = (problems: readonly Problem[]): void => {
  must(problems.length > 0 && problems.length <= 50, () => `refused with ${problems.length} problems`);
  for (const { path, says } of problems) {
    mustBeFit(says);
    must(
      !isControl(path) && path.length < longest,
      () => `a path no one can read: ${JSON.stringify(path.slice(0, 200))}`,
    );
  }
};

/** Does something whose time on the processor (ms, with all that the engine does beside) may be at most so much: it fails only if three times running it takes longer, since a first time is compiled and any may meet the collector. */
export const inTime = <T>(what: () => string, run: () => T, mostCpu = 100): T => {
  let result: T;
  let spent = 0;
  for (let time = 0; time < 3; time += 1) {
    const from = process.cpuUsage();
    result = run();
    const { user, system } = process.cpuUsage(from);
    spent = (user + system) / 1000;
    if (spent <= mostCpu) return result;
  }
  throw new Error(`takes ${spent} ms: ${what()}`);
};

const roots = [Object.prototype, Array.prototype, Function.prototype, String.prototype, Number.prototype];
const keysOf = (): string => roots.map((root) => Reflect.ownKeys(root).map(String).join()).join(';');

/** What the engine's prototypes hold; gives what says whether they hold the same still. */
export const watchPrototypes = (): (() => void) => {
  const before = keysOf();
  return () => {
    expect(keysOf()).toBe(before);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  };
};
