// @vitest-environment jsdom
import { render } from '@testing-library/react';
import { expect, it } from 'vitest';
import type { LineType } from '../../geometry/drawing.ts';
import { polyline } from '../../geometry/shape/path.ts';
import { PaperStrokes } from '../../src/app/save/SheetPicture.tsx';

const lines: readonly LineType[] = ['outline', 'thin', 'hidden', 'centre', 'phantom'];
const path = polyline(
  [
    { x: 0, y: 0 },
    { x: 9, y: 0 },
  ],
  false,
);

/** Each kind of line as it is drawn, in its own widths: none is narrower than `least`, mm. */
const drawn = (least: number) => {
  const strokes = lines.map((line) => ({ kind: 'stroke', id: line, path, line, purpose: 'show' }) as const);
  const { container } = render(
    <svg aria-hidden="true">
      <PaperStrokes strokes={strokes} least={least} />
    </svg>,
  );
  return [...container.querySelectorAll('path')].map((one) => ({
    width: Number(one.getAttribute('stroke-width')),
    dash: (one.getAttribute('stroke-dasharray') ?? '').split(' ').filter(Boolean).map(Number),
  }));
};

it('a sheet shown small has every line larger alike, so that one kind still tells from another', () => {
  const [large, small] = [drawn(0), drawn(0.36)];
  expect(large.map(({ width }) => width)).toEqual([0.35, 0.18, 0.18, 0.18, 0.18]);
  for (const [k, { width, dash }] of small.entries()) {
    expect(width).toBeCloseTo(2 * (large[k]?.width ?? 0), 9);
    expect(dash).toHaveLength(large[k]?.dash.length ?? -1);
    for (const [n, part] of dash.entries()) expect(part).toBeCloseTo(2 * (large[k]?.dash[n] ?? 0), 6);
  }
});
