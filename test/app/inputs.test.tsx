// @vitest-environment jsdom
import './quick.ts';
import { cleanup, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import { assumedRise } from '../../geometry/settle.ts';
import { Numbers } from '../../src/app/numbers/Numbers.tsx';
import { Strings } from '../../src/app/numbers/Strings.tsx';
import { createBench } from '../../src/app/store.ts';
import { BenchContext } from '../../src/app/use-bench.ts';
import { unreadJob } from './bench.ts';
import { findLabelled, labelled } from './labelled.ts';

afterEach(cleanup);
vi.setConfig({ testTimeout: 120_000 });

/** The numbers and the strings of the demo without its readings, or of a job made from it. */
const open = (job = unreadJob()) => {
  const bench = createBench({ job });
  render(
    <BenchContext value={bench}>
      <Numbers />
      <Strings />
    </BenchContext>,
  );
  return { bench, job: () => bench.getState().job, user: userEvent.setup() };
};
const field = (label: string) => labelled(label);
const fold = (id: string) => {
  const found = document.querySelector<HTMLDetailsElement>(`[data-fold="${id}"]`);
  if (found === null) throw new Error(`no fold ${id}`);
  return found;
};
const summary = (id: string) => fold(id).querySelector('summary') as HTMLElement;
/** What is read out of a field beside its label. */
const described = (input: HTMLElement) =>
  (input.getAttribute('aria-describedby') ?? '')
    .split(' ')
    .map((id) => document.getElementById(id)?.textContent ?? '')
    .join(' ');

describe('a reading that need not be taken', () => {
  it('is empty until a number is typed, and empty again when that is cleared, each one step to take back', async () => {
    const { user, bench, job } = open();
    const input = field('Old bridge, thickness');
    expect(input.value).toBe('');
    expect(input.placeholder).toBe('not taken');
    await user.type(input, '9.1');
    expect(job().strung.thickness).toBe(9.1);
    await user.tab();
    await user.clear(input);
    expect(job().strung.thickness).toBe('not taken');
    expect(bench.getState().drafts['strung.thickness']?.says).toBeUndefined();
    await user.tab();
    expect(bench.getState().drafts).toEqual({});
    expect(bench.getState().past.map(({ name }) => name)).toEqual(['Old bridge, thickness', 'Old bridge, thickness']);
    bench.undo();
    expect(job().strung.thickness).toBe(9.1);
    bench.undo();
    expect(job().strung.thickness).toBe('not taken');
  });

  it('takes its word typed out, and says of nonsense that it may be left empty', async () => {
    const { user, job } = open(setAt(unreadJob(), 'strung.relief', 0.2));
    const input = field('Relief as it is');
    await user.clear(input);
    await user.type(input, 'Not taken');
    expect(job().strung.relief).toBe('not taken');
    await user.clear(input);
    await user.paste('12');
    expect(screen.getByRole('alert').textContent).toMatch(
      /^Relief as it is is 12\.0 mm; .*Or leave it empty: “not taken”\.$/,
    );
  });

  it('may be “none”, as the hole for a wire is: its place is asked for only once there is one', async () => {
    const { user, job } = open();
    expect(field('Wire hole').placeholder).toBe('none');
    expect(findLabelled('Wire hole, across')).toBeUndefined();
    await user.type(field('Wire hole'), '2.5');
    expect(job().saddle.wireHole).toBe(2.5);
    expect(field('Wire hole, across')).toBeTruthy();
    await user.clear(field('Wire hole'));
    expect(job().saddle.wireHole).toBe('none');
  });
});

describe('a number that readings may give', () => {
  it('stands in its field with where it comes from, and is typed over or taken over', async () => {
    const { user, job } = open(setAt(unreadJob(), 'guitar.rise', 'readings'));
    const rise = field('Rise under tension');
    expect(Number(rise.value)).toBe(assumedRise);
    expect(described(rise)).toContain('assumed');
    const toggle = screen.getByRole('button', { name: 'Rise under tension: from the readings' });
    expect(toggle.getAttribute('aria-pressed')).toBe('true');
    // What was shown stays when the word is taken out and no number was ever typed.
    await user.click(toggle);
    expect(job().guitar.rise).toBe(assumedRise);
    expect(described(rise)).toBe('');
    await user.click(toggle);
    expect(job().guitar.rise).toBe('readings');
    await user.clear(rise);
    await user.type(rise, '0.4');
    expect(job().guitar.rise).toBe(0.4);
    expect(toggle.getAttribute('aria-pressed')).toBe('false');
  });

  it('follows the readings: the straightedge from the light over the old bridge', async () => {
    const { user, job } = open(setAt(unreadJob(), 'guitar.rise', 0.5));
    const height = field('Straightedge to top');
    await user.type(field('Old bridge, thickness'), '9');
    await user.type(field('Light over the old bridge'), '0.6');
    await user.click(screen.getByRole('button', { name: 'Straightedge to top: from the strung guitar' }));
    expect(job().guitar.neckPlaneHeight).toBe('strung');
    // Neck plane height, strings off: thickness + light at pitch, and the rise on top, by their definitions.
    expect(Number(height.value)).toBeCloseTo(9 + 0.6 + 0.5, 2);
    expect(described(height)).toContain('from the light over the old bridge');
  });

  it('is empty while readings are missing, which are named', async () => {
    const { user } = open();
    await user.click(screen.getByRole('button', { name: 'Straightedge to top: from the strung guitar' }));
    expect(field('Straightedge to top').value).toBe('');
    expect(described(field('Straightedge to top'))).toContain('“Old saddle, exposure”');
  });
});

describe('a group that not every job needs', () => {
  it('is closed while nothing of it is taken, and says so; open where something is', () => {
    open();
    expect(fold('strung').open).toBe(false);
    expect(summary('strung').textContent).toContain('nothing taken');
    expect(summary('scar').textContent).toContain('not measured');
    expect(summary('plate').textContent).toContain('sound, no cap');
    cleanup();
    const worn = setAt(setAt(unreadJob(), 'plate.state', 'worn'), 'strung.relief', 0.2);
    open(worn);
    expect(fold('plate').open).toBe(true);
    expect(fold('strung').open).toBe(true);
  });

  it('says how much is taken once it is closed by hand, and stays as it was put', async () => {
    const { user, bench } = open(setAt(unreadJob(), 'strung.relief', 0.2));
    await user.click(summary('strung'));
    expect(fold('strung').open).toBe(false);
    expect(summary('strung').textContent).toContain('1 of 8 taken');
    expect(bench.getState().folds).toEqual({ strung: false });
    await user.click(summary('strung'));
    expect(fold('strung').open).toBe(true);
    expect(summary('strung').textContent).not.toContain('taken');
  });

  it('does not close on whoever clears its last reading', async () => {
    const { user } = open(setAt(unreadJob(), 'strung.relief', 0.2));
    await user.clear(field('Relief as it is'));
    await user.tab();
    expect(fold('strung').open).toBe(true);
  });

  it('stays open while something in it has to be put right', async () => {
    const { user } = open();
    await user.click(summary('plate'));
    await user.type(field('Plate cap'), 'thin');
    await user.click(summary('plate'));
    expect(fold('plate').open).toBe(true);
    await user.clear(field('Plate cap'));
    await user.click(summary('plate'));
    expect(fold('plate').open).toBe(false);
  });
});

describe('the measured frets', () => {
  const add = async (user: ReturnType<typeof userEvent.setup>, distance: string) => {
    await user.type(field('From the nut to the fret to add'), `${distance}{Enter}`);
  };

  it('are added one after another as they are proposed, and give the scale with its error', async () => {
    const { user, bench, job } = open();
    await user.click(summary('frets'));
    // A scale of 645 mm: 645·(1 − 2^(−n/12)) is 161.79, 214.51, 322.5 and 403.39 mm at frets 5, 7, 12 and 17, by equal temperament.
    for (const [fret, distance] of [
      ['5', '161.79'],
      ['7', '214.51'],
      ['12', '322.5'],
    ] as const) {
      expect(field('Fret to add').value).toBe(fret);
      await add(user, distance);
    }
    expect(field('Fret to add').value).toBe('17');
    expect(job().guitar.measured.map(({ fret, distance }) => [fret, distance])).toEqual([
      [5, 161.79],
      [7, 214.51],
      [12, 322.5],
    ]);
    expect(within(fold('frets')).getByRole('status').textContent).toMatch(/^By 3 frets: 645\.0 mm ± 0\.0/);
    await user.click(screen.getByRole('button', { name: 'Take the scale from them' }));
    expect(job().guitar.scale).toBe('frets');
    expect(field('Scale length').value).toBe('645.0');
    expect(described(field('Scale length'))).toContain('by 3 frets');
    expect(bench.getState().past.map(({ name }) => name)).toEqual([
      'fret 5 added',
      'fret 7 added',
      'fret 12 added',
      'Scale length',
    ]);
  });

  it('hold nothing that nobody measured, refuse nonsense in words, and keep what is left for another field', async () => {
    const { user, job } = open();
    await user.click(summary('frets'));
    await user.click(screen.getByRole('button', { name: 'Add a fret' }));
    expect(job().guitar.measured).toEqual([]);
    await add(user, '3');
    expect(screen.getByRole('alert').textContent).toMatch(/From the nut is 3\.0 mm; it may be from 10\.0 mm/);
    expect(job().guitar.measured).toEqual([]);
    await user.clear(field('From the nut to the fret to add'));
    await user.type(field('From the nut to the fret to add'), '161.8');
    await user.click(field('Relief'));
    expect(job().guitar.measured).toMatchObject([{ fret: 5, distance: 161.8 }]);
    expect(screen.queryByRole('alert')).toBeNull();
  });

  it('are changed in place and removed, which is taken back', async () => {
    const measured = [5, 7, 12].map((fret) => ({ id: `F${fret}`, fret, distance: 645 * (1 - 2 ** (-fret / 12)) }));
    const { user, bench, job } = open(setAt(unreadJob(), 'guitar.measured', measured));
    const input = field('From the nut, fret 7');
    await user.clear(input);
    await user.type(input, '215');
    expect(job().guitar.measured[1]).toMatchObject({ fret: 7, distance: 215 });
    await user.click(screen.getByRole('button', { name: 'Remove fret 7' }));
    expect(job().guitar.measured.map(({ fret }) => fret)).toEqual([5, 12]);
    expect(document.activeElement).toBe(field('From the nut, fret 12'));
    expect(fold('frets').textContent).toContain('1 more');
    expect(bench.getState().past.at(-1)?.name).toBe('fret 7 removed');
    bench.undo();
    expect(job().guitar.measured.map(({ fret }) => fret)).toEqual([5, 7, 12]);
  });
});

describe('the strings’ setbacks', () => {
  it('are typed, or shown as they are computed, or have a column for what was heard', async () => {
    const { user, bench } = open();
    const setbacks = labelled('Setbacks');
    expect(field('Setback, E2').tagName).toBe('INPUT');
    expect(findLabelled('Heard at fret 12, E2')).toBeUndefined();
    await user.selectOptions(setbacks, 'computed');
    const needed = bench.getState().built?.design.strings[0]?.neededSetback ?? Number.NaN;
    expect(findLabelled('Setback, E2')).toBeUndefined();
    expect(Number(labelled('Setback needed, E2').textContent)).toBeCloseTo(needed, 2);
    const finger = field('Finger’s allowance');
    await user.clear(finger);
    await user.type(finger, '0.5');
    // The allowance is added to each computed setback, by its definition; it stood at 1 mm.
    expect(Number(labelled('Setback needed, E2').textContent)).toBeCloseTo(needed - 0.5, 2);
    await user.selectOptions(setbacks, 'heard');
    expect(findLabelled('Finger’s allowance')).toBeUndefined();
    const heard = field('Heard at fret 12, E2');
    expect(heard.placeholder).toBe('not taken');
    await user.type(heard, '3');
    expect(bench.getState().job.strings.list[0]?.cents).toBe(3);
    await user.clear(heard);
    expect(bench.getState().job.strings.list[0]?.cents).toBe('not taken');
  });
});
