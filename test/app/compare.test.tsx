// @vitest-environment jsdom
import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import { gaugesAbout } from '../../geometry/saddle/gauges.ts';
import { Compare } from '../../src/app/compare/Compare.tsx';
import { readRow } from '../../src/app/compare/radius-row.ts';
import { ticks } from '../../src/app/compare/ticks.ts';
import { createBench } from '../../src/app/store.ts';
import { BenchContext } from '../../src/app/use-bench.ts';
import { demoBench, starterJob } from './bench.ts';

afterEach(cleanup);

const open = (bench = demoBench()) => {
  render(
    <BenchContext value={bench}>
      <Compare />
    </BenchContext>,
  );
  return bench;
};
const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }));
/** A row of the table of what differs, by its head: what stands in it. */
const row = (head: RegExp): readonly (string | null)[] => {
  const found = within(screen.getByRole('region', { name: /What differs/ }))
    .getAllByRole('row')
    .find((one) => head.test(one.querySelector('th')?.textContent ?? ''));
  return [...(found?.querySelectorAll('td') ?? [])].map((cell) => cell.textContent);
};

describe('the alternatives', () => {
  it('are kept, named, exchanged and removed by buttons, and stand beside the present design', () => {
    const bench = open();
    expect(screen.queryByRole('figure')).toBeNull();
    press('Keep this design as an alternative');
    const name = screen.getByRole('textbox', { name: 'Name of alternative A' });
    expect(document.activeElement).toBe(name);
    fireEvent.change(name, { target: { value: 'as thick as it was' } });
    fireEvent.blur(name);
    bench.put('bridge.thickness', 8.6);
    cleanup();
    open(bench);
    expect(row(/^Thickness, centre/)).toEqual(['8.6 mm', '9.1 mm']);
    // Thinner by 0.5 mm, the saddle stands out by 0.5 mm more: 4.61 mm at E2 in the demo, by the sheet.
    expect(row(/^Exposure, most/)).toEqual(['5.11 mm at E2', '4.61 mm at E2']);
    expect(screen.getAllByRole('img', { name: /^Across at the saddle/ })).toHaveLength(2);
    expect(screen.getByText('as thick as it was', { selector: '.smalls span' })).toBeTruthy();

    press('Make it the present one: alternative A');
    expect(bench.getState().job.bridge.thickness).toBe(9.1);
    expect(bench.getState().job.alternatives.present).toBe('as thick as it was');
    press('Remove: alternative A');
    expect(bench.getState().job.alternatives.list).toEqual([]);
    expect(screen.queryByRole('figure')).toBeNull();
    expect(bench.getState().past.at(-1)?.name).toBe('alternative A removed');
  });

  it('stand radius against radius, with the gauges that span the present one offered', () => {
    const bench = open();
    const radii = screen.getByRole('textbox', { name: /top radii/ });
    expect((radii as HTMLInputElement).value).toBe('15; 16; 20; flat');
    fireEvent.change(radii, { target: { value: '14; 14 in' } });
    press('Keep one of each');
    expect(screen.getByRole('alert').textContent).toContain('14 in stands here twice');
    fireEvent.change(radii, { target: { value: '12; 14; 16; flat' } });
    press('Keep one of each');
    expect(bench.getState().job.alternatives.list.map(({ bridge }) => bridge.topRadius)).toEqual([
      304.8,
      355.6,
      406.4,
      'flat',
    ]);
    expect(row(/^Bridge top radius/)).toEqual(['18 in', '12 in', '14 in', '16 in', 'flat']);
    expect(bench.getState().past).toHaveLength(1);

    const chart = screen.getByRole('figure', { name: /^Gap between crown and bridge top along the saddle, mm/ });
    expect(chart.querySelectorAll('.chart path[data-alternative]:not(.casing)')).toHaveLength(4);
    expect([...chart.querySelectorAll('[data-string] text')].map((one) => one.textContent)).toEqual([
      'E2',
      'A2',
      'D3',
      'G3',
      'B3',
      'E4',
    ]);
    const numbers = [...chart.querySelectorAll('tbody tr')].map((one) => one.textContent);
    expect(numbers[0]).toMatch(/^E24\.61/);
  });

  it('beside each other are drawn with heights stretched as far as is chosen', () => {
    const bench = demoBench();
    bench.addRadii([355.6]);
    open(bench);
    const tall = () =>
      screen
        .getAllByRole('img', { name: /^Across at the saddle/ })
        .map((one) => Number(one.getAttribute('viewBox')?.split(' ')[3]) - 2 * 2);
    const before = tall();
    fireEvent.change(screen.getByLabelText('Heights of the designs beside each other'), { target: { value: '9' } });
    // But for the 2 mm kept free at either edge, three times as high as at first, which is three times as high as they are.
    expect(tall()).toEqual(before.map((at) => expect.closeTo(3 * at, 6)));
  });

  it('that cannot be built say why in their row, and hide none of the others', () => {
    const job = starterJob('heron');
    const bench = createBench({ job });
    bench.addAlternative();
    bench.addRadii([355.6]);
    bench.become(setAt(bench.getState().job, 'alternatives.list.A.slot.length', 190), 'x', 'x');
    open(bench);
    const item = screen.getByRole('textbox', { name: 'Name of alternative A' }).closest('li');
    expect(item?.textContent).toMatch(/cannot be built:.*190\.0 mm/);
    expect(row(/^Exposure, least/)).toEqual(['3.43 mm at E4', '–', '3.68 mm at E4']);
    expect(screen.getAllByRole('img', { name: /^Across at the saddle/ })).toHaveLength(2);
  });

  it('are six at most', () => {
    const bench = demoBench();
    for (let n = 0; n < 6; n += 1) bench.addAlternative();
    open(bench);
    expect(screen.getByRole('button', { name: 'Keep this design as an alternative' })).toHaveProperty('disabled', true);
    expect(screen.getByText('A job has at most 6 alternatives. Remove one first.')).toBeTruthy();
  });
});

describe('a row of radii', () => {
  const { show } = starterJob('heron');
  it.each([
    ['', /Nothing is typed here/],
    ['14; abc', /“abc” is not a radius/],
    ['14; 1', /1 in|25\.4/],
    ['14; 18', /18 in is the present design’s own/],
    ['10; 12; 14', /3 radii, and letters for 2 more/],
  ])('as “%s” is refused in words', (text, says) => {
    const read = readRow(text, show, 2, 18 * 25.4);
    expect(!read.ok && read.says).toMatch(says);
  });

  it('is read in the reader’s unit, fractions and units typed with it', () => {
    expect(readRow('14; 400 mm; 15 3/4; flat', show, 6, 508)).toEqual({
      ok: true,
      radii: [355.6, 400, 400.05, 'flat'],
    });
  });

  it('spans the present radius with gauges of the unit, as many on either side as there are', () => {
    expect(gaugesAbout(508, 'in', 4)).toEqual([14 * 25.4, 15 * 25.4, 16 * 25.4, 'flat']);
    expect(gaugesAbout(325, 'mm', 4)).toEqual([250, 300, 350, 400]);
    expect(gaugesAbout(325, 'mm', 4, [300, 350])).toEqual([200, 250, 400, 450]);
    expect(gaugesAbout('flat', 'mm', 2)).toEqual([450, 500]);
    expect(gaugesAbout(150, 'mm', 3)).toEqual([200, 250, 300]);
  });
});

it('round numbers span the gaps', () => {
  expect(ticks(3.1, 5.6, 6)).toEqual([3, 3.5, 4, 4.5, 5, 5.5, 6]);
  expect(ticks(0.12, 0.21, 6)).toEqual([0.12, 0.14, 0.16, 0.18, 0.2, 0.22]);
  expect(ticks(4, 4, 6)).toHaveLength(2);
});
