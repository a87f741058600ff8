// @vitest-environment jsdom
import { act, cleanup, render } from '@testing-library/react';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { Resting } from '../../src/app/Resting.tsx';
import { BenchContext, useBenchState } from '../../src/app/use-bench.ts';
import { demoBench, starterJob } from './bench.ts';

/** Stands in for the browser's own, which tells what is in sight. */
class Observer {
  static now: Observer | undefined;
  readonly seen: Element[] = [];
  readonly tell: (entries: { target: Element; isIntersecting: boolean }[]) => void;
  constructor(tell: Observer['tell']) {
    this.tell = tell;
    Observer.now = this;
  }
  observe(element: Element) {
    this.seen.push(element);
  }
  unobserve() {}
  disconnect() {}
}

const inSight = (isIntersecting: boolean) =>
  act(() => Observer.now?.tell((Observer.now?.seen ?? []).map((target) => ({ target, isIntersecting }))));

let renderings = 0;
const Thickness = () => {
  renderings += 1;
  return (
    <p>
      <button type="button" />
      {useBenchState((state) => state.job.bridge.thickness)}
    </p>
  );
};

const path = 'bridge.thickness';

const begin = () => {
  const bench = demoBench();
  const { container } = render(
    <BenchContext value={bench}>
      <Resting>
        <Thickness />
      </Resting>
    </BenchContext>,
  );
  return { bench, says: () => container.textContent };
};

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] });
  vi.stubGlobal('IntersectionObserver', Observer);
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

it('follows each step of a number while it is in sight', () => {
  const { bench, says } = begin();
  inSight(true);
  act(() => bench.hold(path));
  act(() => bench.drag(path, [{ path, value: 9.7 }], ''));
  expect(says()).toBe('9.7');
});

it('rests out of sight while a hand holds a number, however long, and follows when it lets go', () => {
  const { bench, says } = begin();
  inSight(false);
  const before = says();
  act(() => bench.hold(path));
  const count = renderings;
  for (const value of [9.3, 9.5, 9.7]) act(() => bench.drag(path, [{ path, value }], ''));
  act(() => vi.advanceTimersByTime(5000));
  expect([says(), renderings]).toEqual([before, count]);
  act(() => bench.letGo());
  expect(says()).toBe('9.7');
});

it('follows a number that is typed once it rests', () => {
  const { bench, says } = begin();
  inSight(false);
  act(() => bench.enter(path));
  const before = says();
  act(() => bench.type(path, '9.4'));
  act(() => vi.advanceTimersByTime(150));
  act(() => bench.type(path, '9.6'));
  act(() => vi.advanceTimersByTime(150));
  expect(says()).toBe(before);
  act(() => vi.advanceTimersByTime(300));
  expect(says()).toBe('9.6');
});

it('follows at once what comes in sight, and what is no number in work', () => {
  const { bench, says } = begin();
  inSight(false);
  act(() => bench.enter(path));
  act(() => bench.type(path, '9.4'));
  inSight(true);
  expect(says()).toBe('9.4');
  inSight(false);
  act(() => bench.leave(path));
  act(() => bench.undo());
  expect(says()).toBe(String(starterJob('heron').bridge.thickness));
});

it('follows each key where the focus is, though that has not come in sight yet', () => {
  const { bench, says } = begin();
  inSight(false);
  const button = document.querySelector('button') as HTMLButtonElement;
  act(() => button.focus());
  act(() => bench.enter(path));
  act(() => bench.type(path, '9.4'));
  expect(says()).toBe('9.4');
  act(() => button.blur());
  act(() => bench.type(path, '9.6'));
  expect(says()).toBe('9.4');
});
