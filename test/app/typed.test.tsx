// @vitest-environment jsdom
import './quick.ts';
import { act, cleanup, fireEvent, render } from '@testing-library/react';
import { afterEach, expect, it, vi } from 'vitest';
import { parts } from '../../src/app/parts.ts';
import { Sheet } from '../../src/app/sheet/Sheet.tsx';
import { createBench } from '../../src/app/store.ts';
import { BenchContext } from '../../src/app/use-bench.ts';
import { PartsContext } from '../../src/app/use-parts.ts';
import { starterJob } from './bench.ts';

afterEach(cleanup);
vi.setConfig({ testTimeout: 120_000 });

/** The sheet with the demo on it: in jsdom, one view at a time. */
const open = (id = 'heron') => {
  const bench = createBench({ job: starterJob(id) });
  const { container } = render(
    <BenchContext value={bench}>
      <PartsContext value={parts}>
        <Sheet />
      </PartsContext>
    </BenchContext>,
  );
  const find = <E extends Element>(selector: string): E => {
    const found = container.querySelector<E>(selector);
    if (found === null) throw new Error(`no ${selector}`);
    return found;
  };
  const spot = () => find<SVGElement>('[data-spot="bridge.length.value"]');
  const input = () => container.querySelector<HTMLInputElement>('.typed input');
  const typeIn = (text: string) => fireEvent.change(input() as HTMLInputElement, { target: { value: text } });
  const press = (key: string, more = {}) => fireEvent.keyDown(document.activeElement as Element, { key, ...more });
  return { bench, find, spot, input, typeIn, press };
};

it('types a number where it stands on the drawing: read as in the column, refused in words, put back by Escape', () => {
  const { bench, find, spot, input, typeIn, press } = open();
  const across = () => bench.getState().job.bridge.length;
  const text = () => find('[data-mark="bridge.length.value"]').textContent;
  expect(text()).toBe('156.0');

  fireEvent.click(spot());
  expect(document.activeElement).toBe(input());
  expect(input()?.value).toBe('156.0');
  expect(bench.getState().focus).toBe('bridge.length');
  typeIn('6 1/4 in');
  // One inch in mm, exactly: International yard and pound agreement, 1959.
  expect(across()).toBeCloseTo(6.25 * 25.4, 9);
  expect(text()).toBe('158.8');
  press('Enter');
  expect(input()).toBeNull();
  expect(document.activeElement).toBe(spot());
  expect(bench.getState().past.map(({ name }) => name)).toEqual(['Length across']);

  press('Enter');
  typeIn('999');
  expect(find('.typed .says').textContent).toMatch(/^Length across is 999\.0 mm; it may be from 60\.0 mm to 260\.0 mm/);
  expect(input()?.getAttribute('aria-describedby')).toContain(find('.typed .says').id);
  press('Enter');
  expect(input()?.value).toBe('999');
  press('Escape');
  expect(input()).toBeNull();
  expect(across()).toBeCloseTo(6.25 * 25.4, 9);

  fireEvent.click(spot());
  typeIn('160');
  press('ArrowUp');
  press('ArrowUp', { shiftKey: true });
  press('ArrowDown', { altKey: true });
  expect(across()).toBeCloseTo(161.09, 9);
  fireEvent.blur(input() as HTMLInputElement);
  expect(input()).toBeNull();
  expect(bench.getState().past).toHaveLength(2);
});

it('goes by the arrow keys at a grip, to its limit and back, in one step; and types there by Enter', () => {
  const { bench, find, input, press } = open();
  const grip = () => find<SVGElement>('[data-grip="above.length"]');
  grip().focus();
  expect(grip().getAttribute('aria-valuetext')).toBe('156.0 mm');
  press('ArrowRight');
  press('ArrowRight', { shiftKey: true });
  press('ArrowLeft', { altKey: true });
  expect(Number(grip().getAttribute('aria-valuenow'))).toBeCloseTo(157.09, 9);
  expect(bench.getState().past).toHaveLength(1);
  press('Escape');
  expect(grip().getAttribute('aria-valuenow')).toBe('156');
  expect(bench.getState().past).toHaveLength(0);

  act(() => bench.put('bridge.length', 259.5));
  press('ArrowRight', { shiftKey: true });
  expect(bench.getState().job.bridge.length).toBe(260);
  expect(find('.readout').textContent).toContain('as far as it may go');
  press('Enter');
  expect(input()?.value).toBe('260.0');
});

it('has no place for what the job has no more, while the drawing of the last numbers that could be built stays', () => {
  const { bench } = open('godwit');
  const { points } = bench.getState().job.bridge;
  const grips = () => document.querySelectorAll('[data-grip^="above.point."]').length;
  const all = grips();
  expect(all).toBeGreaterThan(4);
  act(() => {
    for (const { id } of points.slice(2)) bench.removeItem('bridge.points', id, 'a point removed');
  });
  expect(bench.getState().solved.ok).toBe(false);
  expect(grips()).toBeLessThanOrEqual(2);
});
