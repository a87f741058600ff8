import { useId, useMemo, useState } from 'react';
import type { Drawing, Primitive } from '../../../geometry/drawing.ts';
import { boundsOfPrimitives, layOut } from '../../../geometry/layout.ts';
import type { Bounds } from '../../../geometry/shape/types.ts';
import { smallViews } from '../../../geometry/views/small.ts';
import { Sample } from '../sheet/Alternatives.tsx';
import { Heights } from '../sheet/Heights.tsx';
import { usualHeights } from '../sheet/laying.ts';
import { Primitives } from '../sheet/Primitives.tsx';
import type { Built } from '../store.ts';
import { words } from '../words.ts';
import type { Compared } from './designs.ts';
import { inShort } from './outcomes.ts';

const says = words.compare;

/** How far the edges keep off the drawing, mm. */
const pad = 2;

/** Without words there is nothing to be laid out by its size. */
const lay = ({ marks }: Drawing): readonly Primitive[] => layOut(marks, { em: 1, say: () => '' });

interface Drawn {
  readonly heights: number;
  readonly across: readonly Primitive[];
  readonly above: readonly Primitive[];
}

const known = new WeakMap<Built['job'], Drawn>();

/** A design as it stands beside others, heights so many times as large, drawn once: while one is worked at, the others stay as they are. */
const drawn = ({ job, design }: Built, heights: number): Drawn => {
  const before = known.get(job);
  if (before?.heights === heights) return before;
  const { across, above } = smallViews(job, design, heights);
  const now = { heights, across: lay(across), above: lay(above) };
  known.set(job, now);
  return now;
};

/** A box for all the drawings of one kind: as wide as the widest, so that all have one scale and stand on one line. */
const boxFor = (all: readonly Drawn[], view: 'across' | 'above'): Bounds =>
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
  // Radii that are nearly alike are told apart only where heights are stretched far.
  const [heights, setHeights] = useState(usualHeights);
  const id = useId();
  const all = useMemo(
    () =>
      designs.flatMap((one) =>
        one.solved.ok ? [{ ...one, built: one.solved, drawn: drawn(one.solved, heights) }] : [],
      ),
    [designs, heights],
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
      <div className="scale">
        <p className="small">{says.scale}</p>
        <Heights id={id} called={says.heights} value={heights} onChange={setHeights} />
      </div>
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
