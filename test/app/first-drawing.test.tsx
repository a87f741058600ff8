// @vitest-environment jsdom
import { act, cleanup, render } from '@testing-library/react';
import { hydrateRoot } from 'react-dom/client';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createStore } from 'zustand/vanilla';
import type { Job } from '../../geometry/job.ts';
import { drawFirst, type Paper } from '../../src/app/first/draw.ts';
import { text } from '../../src/app/first/markup.ts';
import { drawer, roomy, three } from '../../src/app/media.ts';
import { Room } from '../../src/app/Room.tsx';
import type { Built, State } from '../../src/app/state.ts';
import { createBench } from '../../src/app/store.ts';
import { BenchContext } from '../../src/app/use-bench.ts';
import { starters } from '../../src/jobs/index.ts';
import { demoBench, starterJob } from './bench.ts';

/** Windows of each kind that the page knows: which queries they answer to, and the paper that they leave, px. */
const windows = [
  { what: 'wide and high', answers: [roomy, three], paper: { width: 744, height: 520 } },
  { what: 'wide', answers: [three], paper: { width: 716, height: 300 } },
  { what: 'upright', answers: [three, drawer], paper: { width: 798, height: 400 } },
  { what: 'wide and low', answers: [], paper: { width: 716, height: 300 } },
  { what: 'narrow', answers: [drawer], paper: { width: 368, height: 200 } },
] as const;

const inWindow = ({ answers, paper }: (typeof windows)[number]) => {
  vi.stubGlobal('matchMedia', (query: string) => ({
    matches: answers.some((one) => one === query),
    addEventListener: () => {},
    removeEventListener: () => {},
  }));
  const size = (side: 'width' | 'height') =>
    function (this: HTMLElement) {
      return this.className === 'paper' ? paper[side] : 0;
    };
  vi.spyOn(HTMLElement.prototype, 'clientWidth', 'get').mockImplementation(size('width'));
  vi.spyOn(HTMLElement.prototype, 'clientHeight', 'get').mockImplementation(size('height'));
};

beforeEach(() => {
  vi.stubGlobal(
    'ResizeObserver',
    class {
      observe() {}
      disconnect() {}
    },
  );
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const stateOf = (job: Job): State => createBench({ job }).getState();

const room = (state: State, first?: Paper) => (
  <BenchContext value={createStore(() => state)}>
    <Room first={first} />
  </BenchContext>
);

const place = (): HTMLElement => {
  const made = document.createElement('div');
  document.body.replaceChildren(made);
  return made;
};

/** What stands in an element, a tag a line, attributes in order. */
const written = (node: Node): string => {
  if (!(node instanceof Element)) return node.nodeValue ?? '';
  const attributes = [...node.attributes].map(({ name, value }) => `${name}="${value}"`).sort();
  return [`<${node.localName} ${attributes.join(' ')}>`, ...[...node.childNodes].map(written)].join('\n');
};

describe.each(windows)('in a window that is $what', (seen) => {
  it.each(starters)('draws $id just as the whole page would', ({ id }) => {
    inWindow(seen);
    const state = stateOf(starterJob(id));
    const here = place();
    drawFirst(here, state.built as Built);
    const { container } = render(room(state));
    expect(here.querySelectorAll('.drawing path').length).toBeGreaterThan(20);
    expect(written(here)).toBe(written(container));
  });

  it('is taken over as it stands', async () => {
    inWindow(seen);
    const told = vi.spyOn(console, 'error').mockImplementation(() => {});
    const state = demoBench().getState();
    const here = place();
    const paper = drawFirst(here, state.built as Built);
    const before = [...here.querySelectorAll('*')];
    const onRecoverableError = vi.fn();
    const root = await act(async () => hydrateRoot(here, room(state, paper), { onRecoverableError }));
    expect([...here.querySelectorAll('*')]).toEqual(before);
    expect([...here.querySelectorAll('*')].every((one, k) => one === before[k])).toBe(true);
    expect(told.mock.calls).toEqual([]);
    expect(onRecoverableError).not.toHaveBeenCalled();
    await act(async () => root.unmount());
  });
});

it('writes a string’s name as it is typed, whatever stands in it', () => {
  inWindow(windows[0]);
  const job = starterJob('heron');
  const [lowest, ...others] = job.strings.list;
  if (lowest === undefined) throw new Error('the demo has no strings');
  const state = stateOf({ ...job, strings: { ...job.strings, list: [{ ...lowest, name: '<b>&amp;' }, ...others] } });
  const here = place();
  drawFirst(here, state.built as Built);
  expect(here.querySelector('b')).toBeNull();
  expect(here.querySelector('svg')?.textContent).toContain('<b>&amp;');
  expect(text('a < b & "c" > d')).toBe('a &lt; b &amp; &quot;c&quot; &gt; d');
});
