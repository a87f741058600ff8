// @vitest-environment jsdom
import './quick.ts';
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { footprints } from '../../geometry/bridge/footprints/index.ts';
import { build } from '../../geometry/build.ts';
import { type FieldInfo, fieldAt, fieldGroups, getAt } from '../../geometry/fields.ts';
import { type StringSetId, stringSets } from '../../geometry/instrument/sets.ts';
import { type Asked, inUnit, nothingAsked, readAsked } from '../../src/app/newjob/asked.ts';
import { NewJob } from '../../src/app/newjob/NewJob.tsx';
import { StepList } from '../../src/app/steps/StepList.tsx';
import { shown } from '../../src/app/typing.ts';
import { BenchContext } from '../../src/app/use-bench.ts';
import { demoBench } from './bench.ts';
import { labelled } from './labelled.ts';

afterEach(cleanup);
beforeAll(() => {
  // jsdom has dialogs, but cannot open them.
  HTMLDialogElement.prototype.showModal = function open() {
    this.open = true;
  };
  HTMLDialogElement.prototype.close = function close() {
    this.open = false;
    this.dispatchEvent(new Event('close'));
  };
});

const day = '2026-03-31';
const sets = Object.keys(stringSets) as StringSetId[];
const outlines = Object.keys(footprints) as Asked['footprint'][];

describe('what a new job begins with', () => {
  it.each(
    outlines.flatMap((footprint) =>
      sets.flatMap((set) => (['mm', 'fraction'] as const).map((length) => [footprint, set, length] as const)),
    ),
  )('can be built as it is, with the outline %s and the set %s, in %s', (footprint, set, length) => {
    const { job, refused, assumed } = readAsked({ ...nothingAsked, footprint, set, length }, day);
    const built = build(job);
    expect(built.ok ? [] : built.problems).toEqual([]);
    expect(refused).toEqual({});
    // What was asked, and eight more that are read off a guitar.
    expect(assumed).toHaveLength(5 + 8);
    expect(job.strings.list).toHaveLength(set === 'twelve' ? 12 : 6);
  });

  it('is read in the unit that is chosen, and stays as long as it was in another', () => {
    const typed = { ...nothingAsked.typed, 'guitar.scale': '25.5', 'strings.spread': '2 3/16' };
    const asked = { ...nothingAsked, length: 'in' as const, typed };
    const inches = readAsked(asked, day).job;
    // 25.5 in and 2 3/16 in of 25.4 mm each.
    expect(inches.guitar.scale).toBe(647.7);
    expect(inches.strings.spread).toBeCloseTo(55.5625, 10);
    const again = inUnit(asked, 'mm', day);
    expect(again.typed['guitar.scale']).toBe('647.7');
    expect(again.typed['guitar.neckPlaneHeight']).toBe('');
  });

  it('stands at marks of the rule on which it will be read', () => {
    const { job, assumed } = readAsked({ ...nothingAsked, length: 'fraction' }, day);
    const said = (path: string) => shown(fieldAt(path) as FieldInfo, getAt(job, path) as number, job.show);
    // What a bench that measures in inches calls them [practice].
    expect(said('bridge.thickness')).toBe('3/8');
    expect(said('bridge.length')).toBe('6');
    expect(said('bridge.depth')).toBe('1 1/2');
    expect(said('pins.fromSaddle')).toBe('1/2');
    expect(said('action.bass')).toBe('3/32');
    expect(said('guitar.topRadius')).toBe('300');
    expect(assumed).toContain('Straightedge to top: 13/32 in');
    const between = fieldGroups
      .flatMap(({ fields }) => fields)
      .filter(({ path, kind }) => kind === 'length' && Math.abs(Number(getAt(job, path))) > 25.4 / 16)
      .map(({ path }) => `${path} ${said(path)}`)
      .filter((one) => one.includes('.', one.indexOf(' ')));
    // Pins and holes are sold by thousandths.
    expect(between).toEqual(['pins.pinDiameter 0.209', 'pins.hole 0.197']);
    // In millimetres the presets stay as they are.
    expect(readAsked(nothingAsked, day).job.bridge.thickness).toBe(9.3);
  });

  it('takes the board’s end for a cylinder’s while it was not measured', () => {
    const typed = { ...nothingAsked.typed, 'guitar.boardRadiusNut': '12 in' };
    expect(readAsked({ ...nothingAsked, typed }, day).job.guitar.boardRadiusEnd).toBe(304.8);
  });

  it('has the scale by the frets that were measured, where three were', () => {
    // Fret n of a scale of 650 mm in equal temperament lies 650 (1 − 2^(−n/12)) from the nut.
    const at = (n: number) => ({ fret: String(n), distance: (650 * (1 - 2 ** (-n / 12))).toFixed(2) });
    const two = readAsked({ ...nothingAsked, isByFrets: true, frets: [at(5), at(12)] }, day);
    expect(two.refused).toHaveProperty(['guitar.scale']);
    const three = readAsked({ ...nothingAsked, isByFrets: true, frets: [at(5), at(7), at(12)] }, day);
    expect(three.refused).toEqual({});
    const built = build(three.job);
    expect(built.ok && built.job.guitar.scale).toBeCloseTo(650, 1);
  });
});

const open = () => {
  const bench = demoBench();
  let isClosed = false;
  render(
    <BenchContext value={bench}>
      <NewJob
        onClose={() => {
          isClosed = true;
        }}
      />
    </BenchContext>,
  );
  return { bench, isClosed: () => isClosed };
};
const type = (label: string, value: string) => {
  const input = labelled(label);
  fireEvent.change(input, { target: { value } });
  fireEvent.blur(input);
};
const press = (name: string) => fireEvent.click(screen.getByRole('button', { name }));

describe('the dialog of a new job', () => {
  it('refuses at the field, and begins nothing until it is put right', () => {
    const { bench, isClosed } = open();
    type('Scale length', '64');
    expect(labelled('Scale length').getAttribute('aria-invalid')).toBe('true');
    expect(screen.getAllByRole('alert').map(({ textContent }) => textContent)).toContainEqual(
      expect.stringMatching(/^Scale length is 64.0 mm; it may be from 300.0 mm to 1000.0 mm/),
    );
    press('Begin the job');
    expect(isClosed()).toBe(false);
    expect(document.activeElement).toBe(labelled('Scale length'));
    expect(bench.getState().past).toEqual([]);
  });

  it('begins a job in one step, says what is assumed, and is taken back by one', () => {
    const { bench, isClosed } = open();
    const before = bench.getState().job;
    type('Job', 'Teal');
    type('Scale length', '648');
    type('Straightedge to top', '11,5');
    press('Begin the job');
    expect(isClosed()).toBe(true);
    const { job, past, notices } = bench.getState();
    expect(job).toMatchObject({ name: 'Teal', guitar: { scale: 648, neckPlaneHeight: 11.5 } });
    expect(past.map(({ name }) => name)).toEqual(['New job']);
    expect(notices[0]?.details).toEqual([
      'Board radius at the nut: 14 in',
      'Board radius at the end: 14 in',
      'Frets: 20',
      'Body joint at fret: 14',
      'String spread at the nut: 36.5 mm',
      'String spread at the saddle: 55.5 mm',
      'Rise under tension: 0.7 mm',
      'Top’s dome radius: 300 in',
      'Dome along the guitar: flat',
      'Heel depth: 90.0 mm',
      'Relief: 0.15 mm',
    ]);
    bench.undo();
    expect(bench.getState().job).toBe(before);
  });

  it('opens a starter', () => {
    const { bench, isClosed } = open();
    fireEvent.click(labelled('A starter'));
    press('Open Wren, the small one');
    expect(isClosed()).toBe(true);
    expect(bench.getState().job.name).toBe('Wren, the small one');
  });
});

it('the list of steps leads to any of them at once, and back', () => {
  const bench = demoBench();
  for (const [path, value] of [
    ['bridge.thickness', '9'],
    ['slot.depth', '5'],
    ['guitar.relief', '0.2'],
  ] as const) {
    bench.type(path, value);
    bench.leave(path);
  }
  const last = bench.getState().job;
  render(
    <BenchContext value={bench}>
      <StepList onClose={() => {}} />
    </BenchContext>,
  );
  const steps = () => screen.getAllByRole('listitem').map(({ textContent }) => textContent);
  expect(steps()).toEqual(['Relief now', 'Slot depth', 'Thickness, centre', 'As it stood at first']);
  press('Thickness, centre');
  expect(bench.getState().job).toMatchObject({ bridge: { thickness: 9 }, slot: { depth: 5.4 } });
  expect(steps()).toEqual(['Relief', 'Slot depth', 'Thickness, centre now', 'As it stood at first']);
  press('Relief');
  expect(bench.getState().job).toBe(last);
  press('As it stood at first');
  expect(bench.getState()).toMatchObject({ past: [], job: demoBench().getState().job });
});
