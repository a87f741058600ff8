import { type CheckId, rangeOf } from '../checks/ranges.ts';
import type { Design } from '../design.ts';
import { fieldAt, getAt } from '../fields.ts';
import type { Settled } from '../settle.ts';
import type { Figure, Input } from './figure.ts';

/** A number that is neither a field nor a figure, such as a density; or one that stands in for a field. */
export type Given = Omit<Input, 'symbol'>;

/** What an input is read from, once, or once for every string. */
type Source = string | Figure | Given | undefined;
interface Every {
  readonly every: string | Figure | ((k: number) => Given);
}

/** The same for every string, bass first: a symbol such as `T_k` becomes T_1, T_2 and so on. */
export const every = (source: Every['every']): Every => ({ every: source });

/** A string's figure, of one string whichever is asked about: counted from the bass, or from the treble if negative. */
interface OfOne {
  readonly ofOne: Figure;
  readonly at: number;
}
export const bassOf = (figure: Figure): OfOne => ({ ofOne: figure, at: 0 });
export const trebleOf = (figure: Figure): OfOne => ({ ofOne: figure, at: -1 });

const ofField = (job: Settled, path: string, of: string): readonly Given[] => {
  const words = fieldAt(path);
  if (words === undefined || words.kind === 'word' || words.kind === 'text')
    throw new RangeError(`${path} is no field that holds a number.`);
  const value = getAt(job, path);
  if (typeof value !== 'number' && value !== 'flat') return [];
  return [{ name: `${words.label}${of}`, value, kind: words.kind, path }];
};

const read = (source: Source, job: Settled, design: Design, k: number, isOneOfAll: boolean): readonly Given[] => {
  if (source === undefined) return [];
  const { id = '', name = '' } = design.strings[k] ?? {};
  const of = isOneOfAll ? `, ${name}` : '';
  if (typeof source === 'string') return ofField(job, source.replace('*', id), of);
  if (!('how' in source)) return [source];
  const value = source.value(job, design, k);
  if (value === undefined) return [];
  return [
    { name: `${source.title}${of}`, value, kind: source.kind, figure: isOneOfAll ? `${source.id}.${id}` : source.id },
  ];
};

/**
 * The inputs of a figure, by their symbols: a job's path (`*` is the string's key), another figure, or a number with its words. What has no value in this job, as a reading that is not taken, is left out.
 */
export const inputs = (
  job: Settled,
  design: Design,
  k: number,
  sources: Readonly<Record<string, Source | Every | OfOne>>,
): readonly Input[] =>
  Object.entries(sources).flatMap(([symbol, source]) => {
    if (typeof source === 'object' && 'ofOne' in source) {
      const at = (source.at + design.strings.length) % design.strings.length;
      return read(source.ofOne, job, design, at, true).map((given) => ({ symbol, ...given }));
    }
    if (typeof source !== 'object' || !('every' in source))
      return read(source, job, design, k, false).map((given) => ({ symbol, ...given }));
    return design.strings.flatMap((_, i) => {
      const one = typeof source.every === 'function' ? source.every(i) : source.every;
      return read(one, job, design, i, true).map((given) => ({ symbol: symbol.replace('_k', `_${i + 1}`), ...given }));
    });
  });

/** A bound of a check's range, as this job has it. */
export const bound = (job: Settled, check: CheckId, key: 'doubtfulFrom' | 'from' | 'to' | 'doubtfulTo'): Given => {
  const { range, kind, title } = rangeOf(job, check);
  const path = `limits.${check}.${key}`;
  return { name: fieldAt(path)?.label ?? title, value: range[key] ?? 0, kind, path };
};

/** The string's number, from the bass, and how many there are. */
export const number = (k: number): Given => ({
  name: 'the string’s number, from the bass',
  value: k + 1,
  kind: 'count',
});
export const count = (design: Design): Given => ({
  name: 'how many strings',
  value: design.strings.length,
  kind: 'count',
});
