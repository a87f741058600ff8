import { useId, useMemo } from 'react';
import type { Drawing, Primitive } from '../../../geometry/drawing.ts';
import { boundsOfPrimitives, layOut } from '../../../geometry/layout.ts';
import type { Bounds } from '../../../geometry/shape/types.ts';
import { smallViews } from '../../../geometry/views/small.ts';
import { Sample } from '../sheet/Alternatives.tsx';
import { Primitives } from '../sheet/Primitives.tsx';
import type { Built } from '../store.ts';
import { words } from '../words.ts';
import type { Compared } from './designs.ts';
import { inShort } from './outcomes.ts';

const says = words.compare;

/** How many times as large heights are drawn, and how far the edges keep off the drawing, mm. */
const heights = 3;
const pad = 2;

/** Without words there is nothing to be laid out by its size. */
const lay = ({ marks }: Drawing): readonly Primitive[] => layOut(marks, { em: 1, say: () => '' });

interface Drawn {
  readonly across: readonly Primitive[];
  readonly above: readonly Primitive[];
}

const known = new WeakMap<Built['job'], Drawn>();

/** A design as it stands beside others, drawn once: while one is worked at, the others stay as they are. */
const drawn = ({ job, design }: Built): Drawn => {
  const before = known.get(job);
  if (before !== undefined) return before;
  const { across, above } = smallViews(job, design, heights);
  const now = { across: lay(across), above: lay(above) };
  known.set(job, now);
  return now;
};

/** A box for all the drawings of one kind: as wide as the widest, so that all have one scale and stand on one line. */
const boxFor = (all: readonly Drawn[], view: keyof Drawn): Bounds =>
  all
    .map((one) => boundsOfPrimitives(one[view]))
    .reduce((a, b) => ({
      minX: Math.min(a.minX, b.minX),
      minY: Math.min(a.minY, b.minY),
      maxX: Math.max(a.maxX, b.maxX),
      maxY: Math.max(a.maxY, b.maxY),
    }));

const Small = ({ primitives, box, title }: { primitives: readonly Primitive[]; box: Bounds; title: string }) => {
  const id = useId();
  const { minX, minY, maxX, maxY } = box;
  return (
    <svg
      className="drawing"
      role="img"
      aria-labelledby={id}
      viewBox={`${minX - pad} ${minY - pad} ${maxX - minX + 2 * pad} ${maxY - minY + 2 * pad}`}
    >
      <title id={id}>{title}</title>
      <Primitives primitives={primitives} />
    </svg>
  );
};

/** The designs beside each other, small and on one scale: across at the saddle with its crown, and from above. One that cannot be built says why in its list above. */
export const Smalls = ({ designs }: { designs: readonly Compared[] }) => {
  const all = useMemo(
    () => designs.flatMap((one) => (one.solved.ok ? [{ ...one, built: one.solved, drawn: drawn(one.solved) }] : [])),
    [designs],
  );
  if (all.length === 0) return null;
  const boxes = {
    across: boxFor(
      all.map((one) => one.drawn),
      'across',
    ),
    above: boxFor(
      all.map((one) => one.drawn),
      'above',
    ),
  };
  return (
    <>
      <p className="small">{says.scale(heights)}</p>
      <ul className="smalls">
        {all.map(({ letter, name, called, built, drawn }) => (
          <li key={letter ?? ''} data-now={letter === undefined}>
            <p className="head">
              <strong>{letter ?? says.presentHead}</strong> {letter !== undefined && <Sample letter={letter} />}{' '}
              <span>{name}</span>
            </p>
            <Small primitives={drawn.across} box={boxes.across} title={says.across(called)} />
            <Small primitives={drawn.above} box={boxes.above} title={says.above(called)} />
            <p>{inShort(built)}</p>
          </li>
        ))}
      </ul>
    </>
  );
};
