import { parseArgs } from 'node:util';
import type { DecimalMark } from '../../geometry/units.ts';
import { pieces } from '../../templates/pieces/index.ts';
import { type Starter, starters } from '../jobs/index.ts';
import { type PaperSize, paperWords, readPaper } from './paper-size.ts';
import { type PieceList, readPieces } from './piece-list.ts';

/** A draft as it is asked for; what is left out is as the settings say. */
export interface Draft {
  readonly kind: 'draft';
  readonly from: { readonly file: string } | { readonly starter: Starter };
  readonly out: string;
  /** The settings file; those of a new shop where it is left out. */
  readonly settings?: string | undefined;
  readonly paper?: PaperSize | undefined;
  /** Only these; or every one once. */
  readonly pieces?: PieceList | 'all' | undefined;
  readonly printer?: string | undefined;
  /** The mark before decimals in what is drawn and written for people. */
  readonly decimal: DecimalMark;
  /** A font file for what the bundled font lacks. */
  readonly font?: string | undefined;
  /** Whether files for a cutter are written, and the settings that were used. */
  readonly cut: boolean;
  readonly keepSettings: boolean;
}

/** What the command is asked to do. */
export type Asked =
  | { readonly kind: 'help' }
  | { readonly kind: 'schema'; readonly of: 'job' | 'settings' }
  | { readonly kind: 'wrong'; readonly says: string }
  | Draft;

const starterIds = starters.map(({ id }) => id).join(', ');
const column = (rows: readonly (readonly [string, string])[]): string => {
  const wide = Math.max(...rows.map(([first]) => first.length));
  return rows.map(([first, second]) => `                          ${first.padEnd(wide)} ${second}`).join('\n');
};

export const help = `Drafts a replacement bridge and its saddle from a job.

  npm run draft -- [job.json] [options]

Without a job it takes the demo (${starters[0]?.id}). Into the output folder it writes

  drawing.svg           the three views, 1:1
  pieces/<piece>.svg    every template, 1:1, with check bars
  templates.pdf         the templates on sheets of paper, 1:1, with check bars
  report.json           every number that was solved, in mm, degrees and N
  cut/<piece>.svg       with --cut or --all: what is cut or drilled, for a router, laser or knife
  settings.json         with --all: the settings that it was drafted with

Options
  --out <folder>        where to write; sagitta-out if not given
  --paper <paper>       ${paperWords};
                        as the settings say, or a4, if not given
  --starter <id>        a job to start from instead of a file:
${column(starters.map(({ id, about }) => [id, about]))}
  --pieces <list>       only these templates, and how many of each, as in footprint:2,saddle:
${column(pieces.map(({ id, title }) => [id, title]))}
  --cut                 write files for a cutter too, one a template or one a purpose as the settings say
  --all                 write everything: every template that the job has, once; the cutter's files; the settings
  --settings <file>     the shop's settings, as Sagitta saves them: paper, printers, tools, copies
  --printer <name>      correct the print for this printer of the settings; none for as it is
  --decimal <mark>      point or comma, in the numbers that are drawn and said; point if not given. Files for
                        machines (report.json, coordinates) have points always
  --font <file>         a TrueType or OpenType font for letters that the bundled font lacks
  --schema              print the JSON Schema of a job file, and do nothing else
  --settings-schema     print the JSON Schema of a settings file, and do nothing else
  --help                print this, and do nothing else

It ends with 0 when everything is written; with 1, and nothing written, when the job, the settings or the font cannot be read, built
or written; with 2 when it was asked for something that it does not know. Files that are there already are replaced whole.
`;

/** Reads the command's arguments. Never throws. */
export function readOptions(args: readonly string[]): Asked {
  const wrong = (says: string): Asked => ({ kind: 'wrong', says });
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    // Node's own sentence; what it goes on to advise is for other cases.
    return wrong(`${String(error instanceof Error ? error.message : error).split('. ')[0]}.`);
  }
  const { values, positionals } = parsed;
  if (values.help) return { kind: 'help' };
  if (values.schema || values['settings-schema']) return { kind: 'schema', of: values.schema ? 'job' : 'settings' };
  const [file, another] = positionals;
  const {
    starter: id,
    out = 'sagitta-out',
    settings,
    printer,
    font,
    decimal = 'point',
    cut = false,
    all = false,
  } = values;
  if (another !== undefined)
    return wrong(`One job at a time: ${positionals.length} were given, the second is ${another}.`);
  if (file !== undefined && id !== undefined) return wrong(`Give a job file (${file}) or a starter (${id}), not both.`);
  if ([file, out, settings, font].includes('')) return wrong('A file or folder was given without a name.');
  if (all && values.pieces !== undefined)
    return wrong('Give --all for every template, or --pieces for some of them, not both.');
  if (printer?.trim() === '') return wrong('A printer was given without a name: give one of the settings, or none.');
  if (printer !== undefined && settings === undefined && printer.trim().toLowerCase() !== 'none')
    return wrong(`The printer ${printer} stands in no settings: name their file with --settings.`);
  if (decimal !== 'point' && decimal !== 'comma') return wrong(`The decimal mark is point or comma, not ${decimal}.`);
  const paper = values.paper === undefined ? undefined : readPaper(values.paper);
  if (paper?.ok === false) return wrong(paper.says);
  const listed = values.pieces === undefined ? undefined : readPieces(values.pieces);
  if (listed?.ok === false) return wrong(listed.says);
  const starter = id === undefined ? starters[0] : starters.find((s) => s.id === id);
  if (starter === undefined) return wrong(`There is no starter ${id}: choose one of ${starterIds}.`);
  return {
    kind: 'draft',
    from: file === undefined ? { starter } : { file },
    out,
    settings,
    paper: paper?.paper,
    pieces: all ? 'all' : listed?.list,
    printer: printer?.trim(),
    decimal,
    font,
    cut: cut || all,
    keepSettings: all,
  };
}

const parse = (args: readonly string[]) =>
  parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      out: { type: 'string' },
      paper: { type: 'string' },
      starter: { type: 'string' },
      pieces: { type: 'string' },
      cut: { type: 'boolean' },
      all: { type: 'boolean' },
      settings: { type: 'string' },
      printer: { type: 'string' },
      font: { type: 'string' },
      decimal: { type: 'string' },
      schema: { type: 'boolean' },
      'settings-schema': { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
    },
  });
