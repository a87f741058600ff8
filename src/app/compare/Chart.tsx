import { useId, useMemo, useRef } from 'react';
import { shortName } from '../../../geometry/names.ts';
import { gapLine, gapOver } from '../../../geometry/saddle/gap.ts';
import type { Point } from '../../../geometry/shape/types.ts';
import { decimalText, MM_PER_INCH } from '../../../geometry/units.ts';
import { Sample } from '../sheet/Alternatives.tsx';
import { useRoom } from '../sheet/use-room.ts';
import type { Built } from '../store.ts';
import { words } from '../words.ts';
import type { Compared } from './designs.ts';
import { alike } from './outcomes.ts';
import { ticks } from './ticks.ts';

const says = words.compare;

/** Around the plot, px: the strings' names over it in two rows, the scale of gaps left of it, the lines' letters right of it. */
const around = { top: 42, right: 30, bottom: 40, left: 50 };
/** With its heading it is seen whole below a drawing that has its room, on a desk 900 px high. */
const plotHeight = 160;
/** Between the letters at the lines' ends, px. */
const between = 15;

interface Line {
  readonly letter: string | undefined;
  readonly called: string;
  readonly built: Built;
  readonly points: readonly Point[];
}

/** Heights for the lines' letters: each at its line's end, moved down as far as the one before needs its room. */
const spread = (ends: readonly number[]): readonly number[] => {
  const order = ends.map((y, k) => ({ y, k })).sort((a, b) => a.y - b.y);
  const placed: number[] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (const { y, k } of order) {
    last = Math.max(y, last + between);
    placed[k] = last;
  }
  return placed;
};

/** Every second name in a row of its own, where they would run into each other. */
const rowOf = (k: number, places: readonly number[]): number =>
  places.some((x, n) => n > 0 && x - (places[n - 1] ?? 0) < 34) ? k % 2 : 0;

/** The gap between crown and bridge top along the saddle, a line for each design; and the same in numbers. */
export const Chart = ({ designs }: { designs: readonly Compared[] }) => {
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  const width = useRoom(box)?.width ?? 600;
  const lines = useMemo(
    () =>
      designs.flatMap(({ letter, called, solved }): readonly Line[] =>
        solved.ok ? [{ letter, called, built: solved, points: gapLine(solved.job, solved.design) }] : [],
      ),
    [designs],
  );
  const first = lines[0];
  if (first === undefined) return null;

  const { show, hand } = first.built.job;
  const { strings } = first.built.design;
  const inUnit = show.length === 'mm' ? 1 : MM_PER_INCH;
  const all = lines.flatMap(({ points }) => points);
  const [left, right] = [Math.min(...all.map((p) => p.x)), Math.max(...all.map((p) => p.x))];
  const marks = ticks(Math.min(...all.map((p) => p.y)) / inUnit, Math.max(...all.map((p) => p.y)) / inUnit, 6);
  const [low, high] = [marks[0] ?? 0, marks.at(-1) ?? 1];
  const plotWidth = Math.max(120, width - around.left - around.right);
  // A left-handed guitar has its bass on the right, seen from the tail as everywhere.
  const side = hand === 'left' ? -1 : 1;
  const middle = side * ((left + right) / 2);
  const atX = (x: number) => around.left + plotWidth / 2 + ((side * x - middle) / (right - left)) * plotWidth;
  const atY = (gap: number) => around.top + plotHeight * (1 - (gap / inUnit - low) / (high - low));
  const round = (n: number) => Number(n.toFixed(2));
  const path = (points: readonly Point[]) =>
    points.map(({ x, y }, k) => `${k === 0 ? 'M' : 'L'}${round(atX(x))} ${round(atY(y))}`).join('');
  const endOf = ({ points }: Line) => (side === 1 ? points.at(-1) : points[0]) as Point;
  const others = lines.filter(({ letter }) => letter !== undefined);
  const letters = spread(others.map((line) => atY(endOf(line).y)));
  const places = strings.map((s) => atX(s.acrossAtSaddle)).toSorted((a, b) => a - b);
  const bottom = around.top + plotHeight;
  const decimals = Math.max(0, -Math.floor(Math.log10((marks[1] ?? 1) - low) + 1e-9));
  const unit = words.numbers.unit[show.length];
  const ends = side === 1 ? [says.bass, says.treble] : [says.treble, says.bass];

  return (
    <figure className="gap" aria-labelledby={`${id}c`}>
      <figcaption id={`${id}c`}>{says.chart(unit)}</figcaption>
      <div ref={box}>
        <svg
          className="chart"
          role="img"
          aria-labelledby={`${id}t ${id}d`}
          width={width}
          height={bottom + around.bottom}
          viewBox={`0 0 ${width} ${bottom + around.bottom}`}
        >
          <title id={`${id}t`}>{says.chart(unit)}</title>
          <desc id={`${id}d`}>{says.chartSays(lines.map(({ called }) => called))}</desc>
          {marks.map((mark) => (
            <g key={mark}>
              <path className="grid" d={`M${around.left} ${round(atY(mark * inUnit))}h${plotWidth}`} />
              <text x={around.left - 8} y={round(atY(mark * inUnit)) + 4} textAnchor="end">
                {decimalText(mark, decimals, show.decimal)}
              </text>
            </g>
          ))}
          {strings.map((s) => {
            const x = round(atX(s.acrossAtSaddle));
            const row = rowOf(places.indexOf(atX(s.acrossAtSaddle)), places);
            return (
              <g key={s.id} data-string={s.id}>
                <path className="string" d={`M${x} ${around.top - 4}V${bottom}`} />
                <text x={x} y={around.top - 10 - 15 * row} textAnchor="middle">
                  {shortName(s.name)}
                </text>
              </g>
            );
          })}
          <path className="axis" d={`M${around.left} ${bottom}h${plotWidth}`} />
          <text x={around.left} y={bottom + 18} textAnchor="start">
            {ends[0]}
          </text>
          <text x={around.left + plotWidth} y={bottom + 18} textAnchor="end">
            {ends[1]}
          </text>
          <text x={around.left + plotWidth / 2} y={bottom + 18} textAnchor="middle">
            {says.acrossSaddle}
          </text>
          {lines.map((line) => {
            const { letter } = line;
            const d = path(line.points);
            return (
              <g key={letter ?? ''}>
                {letter !== undefined && <path className="casing" data-alternative={letter} d={d} />}
                <path className={letter === undefined ? 'present' : undefined} data-alternative={letter} d={d} />
                {letter !== undefined && (
                  <text
                    className="letter"
                    data-alternative={letter}
                    x={around.left + plotWidth + 6}
                    y={round(letters[others.indexOf(line)] ?? 0) + 4}
                  >
                    {letter}
                  </text>
                )}
              </g>
            );
          })}
        </svg>
      </div>
      <p className="small">{says.chartKey}</p>
      <details>
        <summary>{says.gaps}</summary>
        <section
          className="scroll"
          aria-label={says.gapsScroll}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by the keyboard
          tabIndex={0}
        >
          <table className="figures">
            <thead>
              <tr>
                <th scope="col">{words.outcome.heads.string}</th>
                {lines.map(({ letter }) => (
                  <th key={letter ?? ''} scope="col" data-now={letter === undefined}>
                    {letter ?? says.presentHead} {letter !== undefined && <Sample letter={letter} />}{' '}
                    <small>{unit}</small>
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {strings.map((s) => (
                <tr key={s.id}>
                  <th scope="row">{shortName(s.name)}</th>
                  {lines.map(({ letter, built }) => (
                    <td key={letter ?? ''} data-now={letter === undefined}>
                      {alike(gapOver(built.job, built.design)(s.acrossAtSaddle), 'length', built)}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      </details>
    </figure>
  );
};
