// Each letter of the alternatives that are laid over a drawing is read by itself, and leads to its own line.
import { describe, expect, it } from 'vitest';
import { build } from '../../geometry/build.ts';
import type { Primitive } from '../../geometry/drawing.ts';
import { setAt } from '../../geometry/fields.ts';
import { distanceTo } from '../../geometry/shape/nearest.ts';
import { end } from '../../geometry/shape/path.ts';
import { wordBox } from '../../geometry/text-box.ts';
import { overlay } from '../../geometry/views/overlay.ts';
import { fitRoom } from '../../src/app/sheet/fit.ts';
import { gripsOn } from '../../src/app/sheet/grips/on-drawing.ts';
import { layingOf } from '../../src/app/sheet/laying.ts';
import { starterJob } from './bench.ts';
import { crossedByLines, overEachOther } from './clear-words.ts';
import { windows } from './windows.ts';

type Values = Readonly<Record<string, number | string>>;

const withValues = (values: Values) => {
  const result = build(
    Object.entries(values).reduce((job, [path, value]) => setAt(job, path, value), starterJob('heron')),
  );
  if (!result.ok) throw new Error(result.problems[0]?.says);
  return result;
};

/** Alternatives of the demo, which is 156 mm across, 38 mm deep and 9.1 mm thick, its top of 18 in: nearly as it is, at radii a gauge apart, and well apart. */
const sets: Readonly<Record<string, readonly Values[]>> = {
  'nearly alike': [
    { 'bridge.length': 156.2, 'bridge.depth': 38.1, 'bridge.thickness': 9.2 },
    { 'bridge.length': 156.5, 'bridge.depth': 38.3, 'bridge.thickness': 9.3 },
    { 'bridge.length': 156.8, 'bridge.depth': 38.5, 'bridge.thickness': 9.35 },
  ],
  'of one radius more': [15, 16, 20].map((inches) => ({ 'bridge.topRadius': inches * 25.4 })),
  'well apart': [
    { 'bridge.length': 170, 'bridge.thickness': 8 },
    { 'bridge.depth': 44, 'bridge.topRadius': 'flat' },
  ],
};

const letters = ['A', 'B', 'C'] as const;

const pathsOf = (primitives: readonly Primitive[], is: (id: string) => boolean) =>
  primitives.flatMap((p) => (p.kind === 'stroke' && is(p.id) ? [p.path] : []));

describe.each(Object.entries(sets))('alternatives %s', (_, set) => {
  it.each(windows)('in a window of $window px', ({ room, text, pictures }) => {
    const shows = withValues({});
    const over = overlay(
      shows,
      set.map((values, k) => ({ letter: letters[k] as 'A', ...withValues(values) })),
    );
    let seen = 0;
    for (const name of pictures) {
      const shown = fitRoom({ ...layingOf(name, shows, 3, text, over), room });
      const { primitives } = shown;
      expect(overEachOther(primitives), name).toEqual([]);
      expect(crossedByLines(primitives), name).toEqual([]);
      for (const p of primitives) {
        if (p.kind !== 'text' || p.alternative === undefined) continue;
        seen += 1;
        const [tip] = pathsOf(primitives, (id) => id === `${p.id}.leader`).map(end);
        expect(tip, `${name}, ${p.id} leads nowhere`).toBeDefined();
        // Stretched, an arc becomes cubics, some nanometres off it.
        const own = pathsOf(primitives, (id) => id.startsWith(p.id.replace(/letter$/, '')) && !id.includes('leader'));
        expect(Math.min(...own.map((path) => distanceTo(path, tip ?? p.at))), p.id).toBeLessThan(1e-5);
        const { minX, minY, maxX, maxY } = wordBox(p);
        const covered = gripsOn(shows, shown).filter(
          ({ grip: { at } }) => at.x > minX && at.x < maxX && at.y > minY && at.y < maxY,
        );
        expect(
          covered.map(({ grip }) => grip.id),
          p.id,
        ).toEqual([]);
      }
    }
    expect(seen).toBeGreaterThanOrEqual(set.length);
  });
});
