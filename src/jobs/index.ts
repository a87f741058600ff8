import avocet from './avocet.json' with { type: 'json' };
import dunlin from './dunlin.json' with { type: 'json' };
import godwit from './godwit.json' with { type: 'json' };
import heron from './heron.json' with { type: 'json' };
import kestrel from './kestrel.json' with { type: 'json' };
import lapwing from './lapwing.json' with { type: 'json' };
import plover from './plover.json' with { type: 'json' };
import siskin from './siskin.json' with { type: 'json' };
import starling from './starling.json' with { type: 'json' };
import wren from './wren.json' with { type: 'json' };

/** A job to start from, of an invented instrument. */
export interface Starter {
  readonly id: string;
  readonly title: string;
  /** What is particular about it, in one sentence. */
  readonly about: string;
  /** The job file's text, for `readJob`. */
  readonly text: string;
}

const starter = (id: string, job: { readonly name: string }, about: string): Starter => ({
  id,
  title: job.name,
  about,
  text: `${JSON.stringify(job, null, 2)}\n`,
});

/** Every starter, the demo first. */
export const starters: readonly Starter[] = [
  starter('heron', heron, 'A steel-string flat-top with a belly bridge: the demo.'),
  starter('wren', wren, 'A small guitar, body joint at fret 12, with a rectangular bridge; all in mm.'),
  starter('kestrel', kestrel, 'A compound board, equal gaps between the strings and straight wings.'),
  starter('plover', plover, 'For a left-handed player, measured in inches and fractions, on a flat top.'),
  starter(
    'avocet',
    avocet,
    'Nylon strings tied at a block, a low rectangular bridge, a flat board and a slot open at both ends.',
  ),
  starter('starling', starling, 'Twelve strings in pairs, a belly before the slot and pins in two rows.'),
  starter('dunlin', dunlin, 'A small guitar with a pyramid at each end of its bridge, on a flat top.'),
  starter('lapwing', lapwing, 'A waisted bridge over old holes and braces, pins on an arc, and a cap on a worn plate.'),
  starter('godwit', godwit, 'A free outline, each side its own, that covers an old scar.'),
  starter('siskin', siskin, 'A new saddle only, in a bridge that stays, with an element and its wire under it.'),
];
