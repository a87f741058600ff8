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

/** What of that which is found is more than strings. */
const kindsOf = ({ findings }: Strings): string =>
  JSON.stringify(findings.map(({ check, level, range, means, source }) => [check, level, range, means, source]));

const tell = (word: SwiftWord) => self.postMessage(word);

/** What becomes of the page with these values; undefined where more becomes another than can be told. */
const change = (values: SwiftAsk['values']): SwiftChange | undefined => {
  if (page === undefined || first === undefined || told === undefined) return undefined;
  const job = values.reduce<Job>((so, { path, value }) => setAt(so, path, value), page.job);
  const now = stringsOf(page, job);
  if (now === undefined || now.rest !== first.rest) return undefined;
  const before = told;
  told = now;
  const others = [...now.at].filter(([place, text]) => before.at.get(place) !== text);
  // Lines of a hatching, and pieces of lines, that find no room any more.
  const gone = [...before.at.keys()].filter((place) => !now.at.has(place)).map((place) => [place, ''] as const);
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
