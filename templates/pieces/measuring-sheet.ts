import { applies, type FieldInfo, fieldGroups } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { cleanName, shortName } from '../../geometry/names.ts';
import { ownRoom } from '../form.ts';
import { blankTable } from '../measuring/blank-table.ts';
import { fieldRow } from '../measuring/field-row.ts';
import { heading, pagesOf, paragraph, type Row } from '../text-pages.ts';
import type { ManyPiece } from './piece.ts';

const id = 'measuring-sheet';
const title = 'Measuring sheet';

/** A part of the sheet: a group of the job's fields, less those that are wanted or chosen and not measured; a list in it becomes a table. */
interface Part {
  readonly group: string;
  readonly note?: string;
  readonly leave?: readonly string[];
  readonly lists?: readonly List[];
}

interface List {
  readonly path: string;
  readonly title: string;
  readonly fields: readonly string[];
  readonly rows: number;
  readonly when?: (job: Job) => boolean;
}

const parts: readonly Part[] = [
  { group: 'strung', note: 'Strings at pitch, before anything comes apart.' },
  {
    group: 'measured',
    note: 'Strings off and the neck set straight; the relief at pitch.',
    leave: ['guitar.rise', 'strings.spacing'],
    lists: [{ path: 'guitar.measured', title: 'Frets, for the true scale', fields: ['fret', 'distance'], rows: 6 }],
  },
  {
    group: 'scar',
    lists: [
      { path: 'top.holes', title: 'Holes', fields: ['what', 'across', 'fromNut', 'diameter', 'plan'], rows: 8 },
      { path: 'top.rises', title: 'Belly and dips of the top', fields: ['across', 'fromNut', 'height'], rows: 4 },
      {
        path: 'top.braces',
        title: 'Braces',
        fields: ['name', 'across', 'fromNut', 'acrossTo', 'fromNutTo', 'width'],
        rows: 4,
      },
    ],
  },
  {
    group: 'bridge',
    note: 'The old bridge as it is, or the one that stays.',
    leave: ['bridge.mirrored'],
    lists: [
      {
        path: 'bridge.points',
        title: 'Points of a free outline',
        fields: ['across', 'along', 'turn'],
        rows: 10,
        when: ({ bridge }) => bridge.footprint === 'free',
      },
    ],
  },
  { group: 'slot', leave: ['slot.line', 'slot.floor'] },
  { group: 'saddle', leave: ['saddle.crown', 'saddle.play', 'saddle.proud'] },
  { group: 'pins', leave: ['pins.leaves'] },
  { group: 'plate', leave: ['plate.cap', 'plate.length', 'plate.depth', 'plate.grain'] },
];

/** What is measured whatever was chosen so far: the scar, before its outline is, and the slot that is there. */
const always = (path: string): boolean => path.startsWith('scar.') || path === 'slot.fromNut' || path === 'slot.slant';

const isMeasured = (field: FieldInfo, job: Job, leave: readonly string[]): boolean =>
  !field.path.includes('*') && !leave.includes(field.path) && (always(field.path) || applies(field, job));

const partRows = (part: Part, job: Job, width: number): readonly Row[] => {
  const group = fieldGroups.find((one) => one.id === part.group);
  const { note, leave = [], lists = [] } = part;
  return [
    heading(group?.title ?? ''),
    ...(note === undefined ? [] : [{ ...paragraph(note, width), keeps: true as const }]),
    ...(group?.fields ?? [])
      .filter((field) => isMeasured(field, job, leave))
      .map((field) => fieldRow(field, job, width)),
    ...lists
      .filter(({ when }) => when?.(job) ?? true)
      .flatMap(({ path, title: called, fields, rows }) => [
        { ...paragraph(called, width, { bold: true }), keeps: true as const },
        ...blankTable(
          undefined,
          fields.map((field) => `${path}.*.${field}`),
          Array.from({ length: rows }, () => ''),
          job.show,
          width,
        ),
      ]),
  ];
};

/** The strings' gauges and places, and what is read of each once the guitar is strung again. */
const stringRows = (job: Job, width: number): readonly Row[] => [
  heading('The strings'),
  ...blankTable(
    'String',
    [
      'strings.list.*.gauge',
      'strings.list.*.core',
      'strings.list.*.nutPlace',
      'strings.list.*.saddlePlace',
      'setup.log.*.readings.*.action',
      'setup.log.*.readings.*.cents',
    ],
    job.strings.list.map(({ name }) => shortName(name)),
    job.show,
    width,
  ),
];

/** A blank sheet on which the numbers are taken at the guitar, in the order of the bench. It hangs on no number of the job: only on its name, its units, its strings and what kind of bridge is chosen. */
export const measuringSheet: ManyPiece = {
  id,
  title,
  faceUp: 'the printed one',
  use: 'Take it to the guitar and write the measured numbers down in the order of the bench.',
  usually: 0,
  ownPage: true,
  draw: (job, _, shop) => {
    const room = ownRoom(shop, job.show.decimal);
    const { width } = room;
    const pages = pagesOf(
      [
        paragraph(`${title}: ${cleanName(job.name)}`, width, { bold: true }),
        paragraph('Leave a box empty where nothing was taken. Wide lines in a sketch show what is measured.', width),
        ...parts.flatMap((part) => partRows(part, job, width)),
        ...stringRows(job, width),
      ],
      room,
    );
    return pages.map((marks, k) => ({
      id: `${id}-${k + 1}`,
      title: `${title}, page ${k + 1} of ${pages.length}`,
      marks,
    }));
  },
};
