import { parseArgs } from 'node:util';
import { isPaperId, type PaperId, papers } from '../../templates/paper.ts';
import { type Starter, starters } from '../jobs/index.ts';

/** What the command is asked to do. */
export type Asked =
  | { readonly kind: 'help' }
  | { readonly kind: 'schema' }
  | { readonly kind: 'wrong'; readonly says: string }
  | {
      readonly kind: 'draft';
      readonly from: { readonly file: string } | { readonly starter: Starter };
      readonly out: string;
      readonly paper: PaperId;
    };

const paperIds = Object.keys(papers).join(', ');
const starterIds = starters.map(({ id }) => id).join(', ');

export const help = `Drafts a replacement bridge and its saddle from a job.

  npm run draft -- [job.json] [options]

Without a job it takes the demo (${starters[0]?.id}). Into the output folder it writes

  drawing.svg           the three views, 1:1
  pieces/<piece>.svg    every template, 1:1, with check bars
  templates.pdf         the templates on sheets of paper, 1:1, with check bars
  report.json           every number that was solved, in mm, degrees and N

Options
  --out <folder>        where to write; sagitta-out if not given
  --paper <paper>       ${paperIds}; a4 if not given
  --starter <id>        a job to start from instead of a file:
${starters.map(({ id, about }) => `                          ${id.padEnd(8)} ${about}`).join('\n')}
  --schema              print the JSON Schema of a job file, and do nothing else
  --help                print this, and do nothing else

It ends with 0 when everything is written; with 1, and nothing written, when the job cannot be read, built or written; with 2 when
it was asked for something that it does not know. Files that are there already are replaced whole.
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
  if (values.schema) return { kind: 'schema' };
  const [file, another] = positionals;
  const { starter: id, out = 'sagitta-out', paper = 'a4' } = values;
  if (another !== undefined)
    return wrong(`One job at a time: ${positionals.length} were given, the second is ${another}.`);
  if (file !== undefined && id !== undefined) return wrong(`Give a job file (${file}) or a starter (${id}), not both.`);
  if (file === '' || out === '') return wrong('A file or folder was given without a name.');
  if (!isPaperId(paper)) return wrong(`There is no paper ${paper}: choose one of ${paperIds}.`);
  if (file !== undefined) return { kind: 'draft', from: { file }, out, paper };
  const starter = id === undefined ? starters[0] : starters.find((s) => s.id === id);
  if (starter === undefined) return wrong(`There is no starter ${id}: choose one of ${starterIds}.`);
  return { kind: 'draft', from: { starter }, out, paper };
}

const parse = (args: readonly string[]) =>
  parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      out: { type: 'string' },
      paper: { type: 'string' },
      starter: { type: 'string' },
      schema: { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
    },
  });
