import { expect, it } from 'vitest';
import { across, note, stroke, upright } from '../../../geometry/marks.ts';
import { circle } from '../../../geometry/shape/arc.ts';
import { pointOn } from '../../../geometry/shape/measure.ts';
import { stretched } from '../../../geometry/views/stretch.ts';

const drawing = {
  id: 'view',
  title: 'A view',
  marks: [
    note('title', { x: 1, y: -4 }, ['A view']),
    stroke('round', circle({ x: 5, y: 2 }, 10), {
      line: 'outline',
      purpose: 'show',
      hatch: { holes: [circle({ x: 5, y: 2 }, 1)] },
    }),
    across('wide', { x: 0, y: 1 }, { x: 7, y: 3 }, 5, 2),
    upright('high', { x: 0, y: 1 }, { x: 7, y: 3 }, 5, 2),
  ],
};

it('turns a circle into the ellipse that is so many times as high', () => {
  const round = stretched(drawing, 3).marks.find(({ id }) => id === 'round');
  if (round?.kind !== 'path') throw new Error('no path');
  const points = round.path.segments.flatMap((s) => [0, 0.25, 0.5, 0.75, 1].map((t) => pointOn(s, t)));
  // The ellipse’s equation: ((x − 5)/10)² + ((y − 6)/30)² = 1.
  for (const { x, y } of points) expect(((x - 5) / 10) ** 2 + ((y - 6) / 30) ** 2).toBeCloseTo(1, 4);
  expect(round.hatch?.holes[0]?.segments[0]?.kind).toBe('cubic');
});

it('leaves every number and all that lies across as it was, and says in the title how far it goes', () => {
  const [title, , wide, high] = stretched(drawing, 3).marks;
  expect(title).toMatchObject({ at: { x: 1, y: -12 }, label: ['A view', ' · heights 3×'] });
  expect(wide).toMatchObject({
    from: { x: 0, y: 3 },
    to: { x: 7, y: 9 },
    at: { base: 15, ems: 2 },
    label: [{ value: 7 }],
  });
  expect(high).toMatchObject({ from: { y: 3 }, to: { y: 9 }, at: { base: 5, ems: 2 }, label: [{ value: 2 }] });
});

it('is the drawing itself at true height', () => {
  expect(stretched(drawing, 1)).toBe(drawing);
});
