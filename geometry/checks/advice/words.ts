import { enumerate } from '../../enumerate.ts';
import { fieldAt, getAt } from '../../fields.ts';
import type { Job } from '../../job.ts';
import type { Settled } from '../../settle.ts';
import { formatQuantity, type QuantityKind } from '../../units.ts';
import type { Change } from '../check.ts';
import { resetTo } from './reset.ts';

/** What is read off the guitar and so can only be read again, not made. */
const isReading = (path: string, job: Job): boolean =>
  /^strung\.|^guitar\.(rise|boardWidth|boardRadius)|\.cents$/.test(path) ||
  (path.endsWith('.setback') && job.strings.setbacks === 'heard');

/** Fields whose label says too little, or is no noun, in the middle of a sentence. */
const called: Readonly<Record<string, string>> = {
  'bridge.length': 'the bridge’s length across',
  'bridge.depth': 'the bridge’s depth',
  'bridge.thickness': 'the thickness at the centre',
  'bridge.tilt': 'the deck’s tilt',
  'pins.leaves': 'the distance from the crown to where the strings leave the bridge',
  'saddle.under': 'what lies under the saddle',
};

/** The name of the string whose field this is. */
const stringOf = (path: string, job: Job): string => {
  const id = /^strings\.list\.([^.]+)\./.exec(path)?.[1] ?? '';
  const name = getAt(job, `strings.list.${id}.name`);
  return typeof name === 'string' && name !== '' ? name : id;
};

/** A field as it is spoken of: “the slot depth”, “the setback of E2”. */
const nameOf = (path: string, job: Job): string => {
  const own = called[path];
  if (own !== undefined) return own;
  const label = fieldAt(path)?.label ?? path;
  const small = label.charAt(0).toLowerCase() + label.slice(1);
  if (path.startsWith('strings.list.')) return `the ${small} of ${stringOf(path, job)}`;
  if (/ to /.test(small)) return `the distance from ${small}`;
  return `the ${small.replace(/, (bass|treble)$/, ' on the $1 side')}`;
};

/** A neck reset in words: how far the neck turns, and what comes off the heel or the joint's upper edge. */
const resetSays = (change: Change, settled: Settled): string => {
  const { turn, offHeel } = resetTo(change, settled);
  const say = (of: number, kind: QuantityKind) => formatQuantity(Math.abs(of), kind, settled.show, { unit: true });
  const [way, off] = turn >= 0 ? ['back', 'heel'] : ['forward', 'joint’s upper edge'];
  return `Reset the neck so that the straightedge stands ${change.text} over the top: turn it ${way} by ${say(turn, 'angle')}, ${say(offHeel, 'length')} off the ${off}`;
};

/** Whether a number is written with decimals, not as a fraction. */
const isDecimal = (text: string): boolean => /\d[.,]\d/.test(text);

/** What stands in the field now that is to be changed, with its unit, in decimals where the new number is; undefined for a word. */
const nowAt = ({ path, text }: Change, job: Job): string | undefined => {
  const value = getAt(job, path);
  const kind = fieldAt(path)?.kind;
  if (typeof value !== 'number' || kind === undefined || kind === 'word' || kind === 'text') return undefined;
  const show: Job['show'] =
    isDecimal(text) && job.show.length === 'fraction' ? { ...job.show, length: 'in' } : job.show;
  return formatQuantity(value, kind, show, { unit: true });
};

/** Changes as one sentence. */
export const sentence = (changes: readonly Change[], job: Job, settled: Settled): string => {
  const reset = changes.find(({ path }) => path === 'guitar.neckPlaneHeight');
  const rise = reset && changes.find(({ path }) => path === 'guitar.rise');
  const others = changes.filter((change) => change !== reset && change !== rise);
  const [first] = others;
  const make = (verb: string) => `${verb} ${enumerate(others.map(({ path, text }) => `${nameOf(path, job)} ${text}`))}`;
  if (reset !== undefined) {
    const kept = rise === undefined ? '' : `; type the rise under tension as ${rise.text}, as it is`;
    return `${resetSays(reset, settled)}${first === undefined ? '' : `, and ${make('make')}`}${kept}.`;
  }
  if (first === undefined) return '';
  const again = others.filter(({ path }) => isReading(path, job));
  const heard = again.filter(({ path }) => path.endsWith('.cents'));
  if (heard.length > 0) {
    const each = heard.map(({ path, text }) => `${text} at ${stringOf(path, job)}`);
    return `Listen again at fret 12: ${enumerate(each)} would be within reach.`;
  }
  if (again.length > 0) {
    const names = enumerate(again.map(({ path }) => nameOf(path, job)));
    return `Measure ${names} again: ${enumerate(again.map(({ text }) => text))} would be right.`;
  }
  if (others.length > 1) return `${make('Make')}.`;
  const now = nowAt(first, job);
  return `${make('Make')}${now === undefined ? '' : ` instead of ${now}`}.`;
};

/** How late a way is told among others: what a bench can change first, then what is wanted, a neck reset or a new nut, and readings to take again. */
export const lateness = (changes: readonly Change[], job: Job): number =>
  Math.max(
    ...changes.map(({ path }) =>
      path === 'guitar.neckPlaneHeight' || path === 'guitar.nutSpread'
        ? 2
        : path.startsWith('action.')
          ? 1
          : isReading(path, job)
            ? 3
            : 0,
    ),
  );
