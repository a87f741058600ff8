// @vitest-environment jsdom
import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { readJob } from '../../geometry/job-file.ts';
import { App } from '../../src/app/App.tsx';
import { Guard } from '../../src/app/crash/Guard.tsx';
import { Wreck } from '../../src/app/crash/Wreck.tsx';
import { BenchContext } from '../../src/app/use-bench.ts';
import { demoBench, starterJob } from './bench.ts';

/** Whether the drawing fails, and what the browser was given to save. */
const at = vi.hoisted(() => ({ fails: true, saved: [] as string[] }));
vi.mock('../../src/app/sheet/Sheet.tsx', () => ({
  Sheet: () => {
    if (at.fails) throw new Error('the arc has no end');
    return <p>drawn</p>;
  },
}));
vi.mock('../../src/app/save/files.ts', () => ({
  saveText: (text: string) => at.saved.push(text),
  saveBlob: () => {},
}));

vi.setConfig({ testTimeout: 30_000 });
beforeEach(() => {
  at.fails = true;
  at.saved = [];
  // React tells of what was thrown there as well.
  vi.spyOn(console, 'error').mockImplementation(() => {});
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

const open = () => {
  const bench = demoBench();
  render(
    <BenchContext value={bench}>
      <App />
    </BenchContext>,
  );
  return bench;
};

it('leaves the numbers and all else where the drawing breaks, says why, and saves the job', () => {
  const bench = open();
  expect(screen.getByRole('alert').textContent).toContain('The drawing cannot be shown');
  expect(screen.getByRole('alert').textContent).toContain('the arc has no end');
  const thickness = screen.getByRole('textbox', { name: 'Thickness, centre' });
  fireEvent.change(thickness, { target: { value: '9.25' } });
  expect(bench.getState().job.bridge.thickness).toBe(9.25);
  fireEvent.click(screen.getAllByRole('button', { name: 'Save job' }).at(-1) as HTMLElement);
  const read = readJob(at.saved[0] ?? '');
  expect(read.ok && read.job).toEqual(bench.getState().job);
});

it('tries again when asked, and with the next change of the job', () => {
  const bench = open();
  fireEvent.click(screen.getByRole('button', { name: 'Try again' }));
  expect(screen.queryByText('drawn')).toBeNull();
  at.fails = false;
  act(() => bench.put('bridge.thickness', 9.5));
  expect(screen.getByText('drawn')).toBeDefined();
});

const Page = () => {
  throw new Error('nothing to stand on');
};

it('offers the job’s file where the whole page breaks', async () => {
  const job = starterJob('wren');
  const made: Blob[] = [];
  URL.createObjectURL = (blob: Blob) => {
    made.push(blob);
    return 'blob:job';
  };
  const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => {});
  const flush = vi.fn(async () => {});
  render(
    <Guard onBroken={flush} instead={(error) => <Wreck error={error} job={job} />}>
      <Page />
    </Guard>,
  );
  expect(flush).toHaveBeenCalledOnce();
  expect(screen.getByRole('alert').textContent).toContain('nothing to stand on');
  fireEvent.click(screen.getByRole('button', { name: 'Save job' }));
  expect(click).toHaveBeenCalledOnce();
  const text = await new Promise<string>((done) => {
    const reader = new FileReader();
    reader.onload = () => done(String(reader.result));
    reader.readAsText(made[0] as Blob);
  });
  const read = readJob(text);
  expect(read.ok && read.job).toEqual(job);
});
