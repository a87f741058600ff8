import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import {
  elementAndPlace,
  findingsPart,
  type Put,
  type ShownPage,
  type SwiftAsk,
  type SwiftChange,
  type SwiftWord,
} from './swift/page.ts';
import { type Strings, stringsOf } from './swift/strings.ts';

/** The page as it stands, what it says then, and what was told of it last. */
let page: ShownPage | undefined;
let first: Strings | undefined;
let told: Strings | undefined;

/** Whether all of one row are in another, in its order. */
const isPartOf = (some: readonly string[], all: readonly string[]): boolean => {
  let k = 0;
  for (const one of all) if (one === some[k]) k += 1;
  return k === some.length;
};

/** What of that which is found is more than strings. */
const kindsOf = ({ findings }: Strings): string =>
  JSON.stringify(findings.map(({ check, level, range, means, source }) => [check, level, range, means, source]));

const tell = (word: SwiftWord) => self.postMessage(word);

/** What becomes of the page with these values; undefined where more becomes another than can be told. */
const change = (values: SwiftAsk['values']): SwiftChange | undefined => {
  if (page === undefined || first === undefined || told === undefined) return undefined;
  const job = values.reduce<Job>((so, { path, value }) => setAt(so, path, value), page.job);
  const now = stringsOf(page, job);
  if (now === undefined || now.rest !== first.rest || !isPartOf(now.drawn, first.drawn)) return undefined;
  const before = told;
  told = now;
  const others = [...now.at].filter(([place, text]) => before.at.get(place) !== text);
  // What is not drawn any more, such as a line of a hatching that finds no room, says nothing.
  const gone = [...before.at.keys()]
    .filter((place) => !now.at.has(place) && ['d', 'text'].includes(elementAndPlace(place)[1]))
    .map((place) => [place, ''] as const);
  const all = [...others, ...gone].map(([place, text]): Put => [...elementAndPlace(place), text]);
  if (kindsOf(now) === kindsOf(before)) return { puts: all };
  return { puts: all.filter(([element]) => !element.startsWith(findingsPart)), findings: now.findings };
};

self.onmessage = ({ data: { turn, page: another, values } }: MessageEvent<SwiftAsk>) => {
  if (another !== undefined) {
    page = another;
    first = stringsOf(page, page.job);
    told = first;
  }
  tell({ turn, change: change(values) });
};

tell('here');
