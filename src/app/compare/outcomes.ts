import type { SolvedString } from '../../../geometry/design.ts';
import type { Job } from '../../../geometry/job.ts';
import { shortName } from '../../../geometry/names.ts';
import type { QuantityKind } from '../../../geometry/units.ts';
import { formatQuantity } from '../../../geometry/units.ts';
import type { Built } from '../store.ts';
import { words } from '../words.ts';

const says = words.compare;

/** A number of every design, in words. */
export interface OutcomeRow {
  readonly id: string;
  readonly title: string;
  readonly text: (built: Built) => string;
}

const least = (strings: readonly SolvedString[], of: 'exposure' | 'breakAngle'): SolvedString =>
  strings.reduce((best, s) => (s[of] < best[of] ? s : best));
const most = (strings: readonly SolvedString[], of: 'exposure' | 'breakAngle'): SolvedString =>
  strings.reduce((best, s) => (s[of] > best[of] ? s : best));

/** A number in the reader’s unit; lengths all with as many decimals, as on the drawing, so that a row of them can be compared. */
export const alike = (value: number, kind: QuantityKind, { job: { show } }: Built, unit = false): string => {
  const digits = kind === 'length' ? { digits: show.length === 'mm' ? 2 : 3 } : {};
  return formatQuantity(value, kind, show, { ...digits, unit });
};

const say = (value: number, kind: QuantityKind, built: Built): string => alike(value, kind, built, true);

const extremes = (of: 'exposure' | 'breakAngle', kind: QuantityKind): readonly OutcomeRow[] =>
  ([least, most] as const).map((pick) => ({
    id: `${of}.${pick === least ? 'least' : 'most'}`,
    title: pick === least ? says.least[of] : says.most[of],
    text: (built) => {
      const string = pick(built.design.strings, of);
      return says.at(say(string[of], kind, built), shortName(string.name));
    },
  }));

/** What the designs are judged by beside the fields in which they differ: exposure, break angle, thickness, and what each string pushes the saddle down with. */
export const outcomeRows = (job: Job): readonly OutcomeRow[] => [
  ...extremes('exposure', 'length'),
  ...extremes('breakAngle', 'angle'),
  {
    id: 'thickness',
    title: says.thickness,
    text: (built) => formatQuantity(built.job.bridge.thickness, 'length', built.job.show, { unit: true }),
  },
  ...job.strings.list.map((string, k) => ({
    id: `load.${string.id}`,
    title: says.load(shortName(string.name)),
    text: (built: Built) => say(built.design.strings[k]?.downforce ?? Number.NaN, 'force', built),
  })),
  { id: 'load', title: says.loadAll, text: (built) => say(built.design.totalDownforce, 'force', built) },
];

/** Exposure and break angle of a design, from least to most, in one line. */
export const inShort = (built: Built): string => {
  const { strings } = built.design;
  const range = (of: 'exposure' | 'breakAngle', kind: QuantityKind) =>
    [alike(least(strings, of)[of], kind, built), say(most(strings, of)[of], kind, built)] as const;
  return says.inShort(range('exposure', 'length'), range('breakAngle', 'angle'));
};
