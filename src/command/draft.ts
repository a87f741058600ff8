import { run } from './run.ts';

/** npm starts its scripts in the project's folder; what a person types is meant from where they stand. */
const standing = process.env.npm_lifecycle_event === 'draft' ? process.env.INIT_CWD : undefined;

process.exitCode = await run(process.argv.slice(2), {
  say: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
  standing: standing ?? process.cwd(),
});
