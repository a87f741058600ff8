// @vitest-environment jsdom
import './quick.ts';
import { cleanup, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, expect, it, vi } from 'vitest';
import { App } from '../../src/app/App.tsx';
import { BenchContext } from '../../src/app/use-bench.ts';
import { demoBench } from './bench.ts';
import { findLabelled, labelled } from './labelled.ts';

afterEach(cleanup);
// jsdom lays nothing out, so it cannot scroll.
Element.prototype.scrollIntoView ??= () => {};
// Nor has it workers: advice on findings is tested where there are some.
vi.mock('../../src/app/workers.ts', () => ({ adviceWorker: () => ({ postMessage() {}, terminate() {} }) }));
// Every key is a whole rendering in jsdom, which is slow at it on a busy machine.
vi.setConfig({ testTimeout: 120_000 });

/** The page with the demo on it, as a person finds it. */
const open = () => {
  const bench = demoBench();
  const { container } = render(
    <BenchContext value={bench}>
      <App />
    </BenchContext>,
  );
  const mark = (id: string) => container.querySelector(`[data-mark$="${id}"]`);
  return { bench, mark, user: userEvent.setup() };
};

const field = (label: string) => labelled(label);
const retype = async (user: ReturnType<typeof userEvent.setup>, input: HTMLInputElement, text: string) => {
  await user.clear(input);
  await user.type(input, text);
};
/** Puts a text in at one stroke, so that nothing of it is taken for a value on the way. */
const paste = async (user: ReturnType<typeof userEvent.setup>, input: HTMLInputElement, text: string) => {
  await user.clear(input);
  await user.paste(text);
};
/** All that is drawn, in short. */
const drawing = (): string =>
  [...document.querySelectorAll('.drawing [data-mark]')].map((e) => e.getAttribute('d') ?? e.textContent).join();

it('draws a number’s change while it is typed, and shows it as it is stored once the field is left', async () => {
  const { user, mark } = open();
  const before = Number(mark('gap.E2.value')?.textContent);
  await retype(user, field('Thickness, centre'), '9');
  expect(Number(mark('gap.E2.value')?.textContent)).toBeCloseTo(before + 0.1, 2);
  expect(field('Thickness, centre').value).toBe('9');
  await user.tab();
  expect(field('Thickness, centre').value).toBe('9.0');
});

it('leaves a bad text in its field, says why, and keeps the drawing', async () => {
  const { user } = open();
  const before = drawing();
  await paste(user, field('Relief'), '2 apples');
  const input = field('Relief');
  expect(input.value).toBe('2 apples');
  expect(input.getAttribute('aria-invalid')).toBe('true');
  const says = screen.getByText(/“2 apples”|“apples”/);
  expect(says.getAttribute('role')).toBe('alert');
  expect(input.getAttribute('aria-describedby')).toContain(says.id);
  await user.tab();
  expect(field('Relief').value).toBe('2 apples');
  expect(drawing() === before).toBe(true);
  await user.click(field('Relief'));
  await user.keyboard('{Escape}');
  expect(field('Relief').value).toBe('0.15');
});

it('names the limits of a number that is out of range in the unit in which it was typed', async () => {
  const { user } = open();
  await user.click(screen.getAllByRole('radio', { name: 'inch' })[0] as HTMLElement);
  await retype(user, field('Length across'), '99');
  expect(screen.getByText(/Length across is 99\.000 in; it may be from 2\.362 in to 10\.236 in/)).toBeTruthy();
});

it('keeps a value that cannot be built, says what is in the way and leads to its field', async () => {
  const { user } = open();
  const before = drawing();
  await paste(user, field('Front edge to saddle line'), '38');
  expect(screen.getByText('Drawing of the last numbers that could be built')).toBeTruthy();
  expect(drawing() === before).toBe(true);
  const head = screen.getByRole('heading', { name: /keep.* this from being built/ });
  const problems = head.closest('.problems') as HTMLElement;
  await user.click(head);
  await user.click(within(problems).getByRole('button', { name: 'Go to Front edge to saddle line' }));
  expect(document.activeElement).toBe(field('Front edge to saddle line'));
  expect(field('Front edge to saddle line').value).toBe('38.0');
  const said = field('Front edge to saddle line').getAttribute('aria-describedby')?.split(' ')[0] ?? '';
  expect(document.getElementById(said)?.textContent).toContain('does not lie inside the footprint');
});

it('turns every length to the unit chosen and leaves the job as it is', async () => {
  const { user, bench, mark } = open();
  const { bridge } = bench.getState().job;
  await user.click(screen.getAllByRole('radio', { name: '1/64 in' })[0] as HTMLElement);
  expect(bench.getState().job.bridge).toBe(bridge);
  // 156 mm are 6 9/64 in (155.97 mm), to the nearest 64th.
  expect(field('Length across').value).toBe('6 9/64');
  expect(mark('bridge.length.value')?.textContent).toBe('6 9/64');
});

it('shows a name of marks and scripts as the text that it is', async () => {
  const { user } = open();
  await retype(user, field('Job'), '<script>alert(1)</script>');
  expect(document.querySelector('#app script, .bench script')).toBeNull();
  expect(document.title).toContain('<script>alert(1)</script>');
});

it('takes “flat” by its word or by its button, and gives the number back', async () => {
  const { user, bench } = open();
  const was = bench.getState().job.bridge.topRadius;
  await user.click(screen.getByRole('button', { name: 'Bridge top radius: flat' }));
  expect(bench.getState().job.bridge.topRadius).toBe('flat');
  expect(field('Bridge top radius').value).toBe('flat');
  await user.click(screen.getByRole('button', { name: 'Bridge top radius: flat' }));
  expect(bench.getState().job.bridge.topRadius).toBe(was);
  await retype(user, field('Bridge top radius'), 'Flat');
  expect(bench.getState().job.bridge.topRadius).toBe('flat');
});

it('shows only the fields that count, and a field’s help and usual range while it is in focus', async () => {
  const { user } = open();
  expect(field('Belly width')).toBeTruthy();
  await user.selectOptions(labelled('Footprint'), 'rectangle');
  expect(findLabelled('Belly width')).toBeUndefined();
  await user.click(field('Relief'));
  const help = document.getElementById(field('Relief').getAttribute('aria-describedby') ?? '');
  expect(help?.textContent).toContain('straightedge laid from fret 1 to the body joint');
  expect(help?.textContent).toContain('0.1 to 0.3 mm');
});

it('lights what the field in focus shows, and nothing else', async () => {
  const { user, mark } = open();
  await user.click(field('Length across'));
  expect(mark('bridge.length.value')?.classList.contains('lit')).toBe(true);
  expect(mark('bridge.depth.value')?.classList.contains('lit')).toBe(false);
});

it('lets a string be changed, added and removed in its table', async () => {
  const { user, bench } = open();
  await retype(user, field('Gauge, E4'), '.013');
  expect(bench.getState().job.strings.list.at(-1)?.gauge).toBeCloseTo(0.3302, 6);
  await retype(user, field('Core, E4'), 'x');
  expect(screen.getByText(/“x”/).getAttribute('role')).toBe('alert');
  await user.click(screen.getByRole('button', { name: 'Remove E2' }));
  expect(findLabelled('Gauge, E2')).toBeUndefined();
  await user.keyboard('{Control>}z{/Control}');
  expect(field('Gauge, E2')).toBeTruthy();
});
