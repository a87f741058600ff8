import { inRow } from '../../geometry/enumerate.ts';
import { applies, type FieldGroup, type FieldInfo, fieldGroups, getAt, itemFields } from '../../geometry/fields.ts';
import { cleanName, shortName } from '../../geometry/names.ts';
import type { Settled } from '../../geometry/settle.ts';
import { heading, pairs, paragraph, type Row, table } from '../text-pages.ts';
import { fieldText, unitText } from './value-text.ts';

/** How the drawing is shown is no number of the work; a job's own ranges stand with what the checks say. */
const leftOut = (path: string): boolean => path.startsWith('show.') || path.startsWith('limits.');

const listOf = ({ path }: FieldInfo): string | undefined => {
  const star = path.indexOf('.*');
  return star < 0 ? undefined : path.slice(0, star);
};

interface Item {
  readonly id: string;
  readonly [key: string]: unknown;
}

const itemsAt = (job: Settled, path: string): readonly Item[] => (getAt(job, path) ?? []) as readonly Item[];

/** An item of a list with all that it holds, lists of its own too, in one sentence. */
const itemText = (job: Settled, list: string, item: Item): string => {
  const fields = itemFields(list, '*').filter(({ path }) => !path.slice(list.length + 3).includes('.*'));
  const own = fields
    .map((field) => ({ ...field, path: field.path.replace(`${list}.*`, `${list}.${item.id}`) }))
    .filter((field) => applies(field, job))
    .map((field) => `${field.label} ${fieldText(field, getAt(job, field.path), job.show)}`);
  const inner = Object.entries(item).flatMap(([key, value]) =>
    Array.isArray(value)
      ? (value as readonly Item[]).map((one) => {
          const said = Object.entries(one).flatMap(([name, what]) => {
            const field = itemFields(list, '*').find(({ path }) => path === `${list}.*.${key}.*.${name}`);
            return field ? [`${field.label.toLowerCase()} ${fieldText(field, what, job.show)}`] : [];
          });
          return `${one.id}: ${inRow(said)}`;
        })
      : [],
  );
  return cleanName([...own, ...inner].join('; '));
};

/** The strings' numbers in a table, a column each; before it what is said of them in words. */
const stringRows = (job: Settled, width: number): readonly Row[] => {
  const { list } = job.strings;
  const named = list.map(({ name, id }) => shortName(name || id));
  const found = itemFields('strings.list', '*')
    .filter(({ path }) => !path.endsWith('.name'))
    .map((field) => {
      const values = list.map(({ id }) => {
        const path = field.path.replace('*', () => id);
        return applies({ ...field, path }, job) ? getAt(job, path) : undefined;
      });
      return { field, values };
    })
    .filter(({ values }) => values.some((value) => value !== undefined));
  const isWord = ({ kind }: FieldInfo) => kind === 'word' || kind === 'text';
  const inWords = found
    .filter(({ field }) => isWord(field))
    .map(({ field, values }) => {
      const said = values.flatMap((value, k) =>
        value === undefined ? [] : [`${named[k]} ${fieldText(field, value, job.show)}`],
      );
      return paragraph(`${field.label}: ${inRow(said)}.`, width);
    });
  const body = found
    .filter(({ field }) => !isWord(field))
    .map(({ field, values }) => {
      const unit = field.kind === 'word' || field.kind === 'text' ? '' : unitText(field.kind, job.show);
      // A pitch stands by its note, so its unit stays with those that are none.
      const isBare = field.kind !== 'frequency' && unit !== '';
      // A word such as “plain” in place of a number has no unit to leave out.
      const bare = (value: unknown, text: string) =>
        isBare && typeof value === 'number' ? text.slice(0, -unit.length).trimEnd() : text;
      return {
        label: isBare ? `${field.label}, ${unit}` : field.label,
        cells: values.map((value) => (value === undefined ? '–' : bare(value, fieldText(field, value, job.show)))),
      };
    });
  return [...inWords, ...table(named, body, width)];
};

const groupRows = (job: Settled, { id, title, fields }: FieldGroup, width: number): readonly Row[] => {
  const counting = fields.filter((field) => !leftOut(field.path));
  const single = counting.filter((field) => listOf(field) === undefined && applies(field, job));
  const lists = [...new Set(counting.flatMap((field) => listOf(field) ?? []))];
  const rows: readonly Row[] = [
    ...pairs(
      single.map((field) => [field.label, fieldText(field, getAt(job, field.path), job.show)] as const),
      width,
    ),
    ...(id === 'strings' ? stringRows(job, width) : []),
    ...lists
      .filter((list) => list !== 'strings.list')
      .flatMap((list) => itemsAt(job, list).map((item) => paragraph(itemText(job, list, item), width))),
  ];
  return rows.length === 0 ? [] : [heading(title), ...rows];
};

/** Every number and choice of the job that counts in it, in bench order, with its unit. */
export const jobRows = (job: Settled, width: number): readonly Row[] =>
  fieldGroups.flatMap((group) => groupRows(job, group, width));
