import { Fragment, type FragmentInstance, type ReactNode, useEffect, useLayoutEffect, useMemo, useState } from 'react';
import type { StoreApi } from 'zustand';
import type { State } from './state.ts';
import { tellSlow } from './swift/slow.ts';
import { FollowedContext, useStateOrBench } from './use-bench.ts';

/** A number has come to rest after this long, ms. */
const rest = 200;

/** Whether nothing but a number's value, and what comes of it, is another: it is being typed, or dragged. */
const isInWork = (now: State, before: State): boolean =>
  now.entry !== undefined &&
  now.focus === before.focus &&
  now.folds === before.folds &&
  now.id === before.id &&
  now.isDrawerOpen === before.isDrawerOpen;

/** A bench's state as what lies out of sight follows it: a number that is typed or dragged counts there once it rests. */
const resting = (bench: StoreApi<State>) => {
  const listeners = new Set<(now: State, before: State) => void>();
  let isSeen = true;
  /** What has the focus is typed at: it comes in sight, but only after the first keys. */
  let hasFocus = false;
  /** The state in which it lies, while it rests. */
  let kept: State | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** When it last changed, ms. */
  let changed = 0;
  const tell = (before: State) => {
    const now = bench.getState();
    for (const listener of listeners) listener(now, before);
  };
  const wake = () => {
    clearTimeout(timer);
    timer = undefined;
    const before = kept;
    kept = undefined;
    if (before !== undefined) tell(before);
  };
  const onRest = () => {
    const left = changed + rest - performance.now();
    if (left > 0) timer = setTimeout(onRest, left);
    else wake();
  };
  return {
    see: (seen: boolean) => {
      isSeen = seen;
      if (seen) wake();
    },
    focus: (has: boolean) => {
      hasFocus = has;
      if (has) wake();
    },
    follow: () => {
      const stop = bench.subscribe((now, before) => {
        if (isSeen || hasFocus || !isInWork(now, kept ?? before)) {
          if (kept === undefined) return tell(before);
          return wake();
        }
        kept ??= before;
        // A hand that holds a number still has not let go of it; when it does, it is no more in work.
        if (now.held !== undefined) {
          clearTimeout(timer);
          timer = undefined;
          return;
        }
        changed = performance.now();
        timer ??= setTimeout(onRest, rest);
      });
      return () => {
        stop();
        clearTimeout(timer);
        kept = undefined;
      };
    },
    state: {
      getState: () => kept ?? bench.getState(),
      getInitialState: bench.getInitialState,
      subscribe: (listener: (now: State, before: State) => void) => {
        listeners.add(listener);
        return () => listeners.delete(listener);
      },
    },
  };
};

/** Parts of the page that need not follow each step of a number while they are out of sight: they do so once it rests, or once they come in sight. A slow one does not follow a hand at once while it is in sight either, but with the whole page now and then. */
export const Resting = ({ children, isSlow = false }: { children: ReactNode; isSlow?: boolean }) => {
  const bench = useStateOrBench();
  const { see, focus, follow, state } = useMemo(() => resting(bench), [bench]);
  const [fragment, setFragment] = useState<FragmentInstance | null>(null);
  // Before the children follow it, which they do once they are painted.
  useLayoutEffect(follow, [follow]);
  useEffect(() => {
    if (fragment === null) return;
    const [come, go] = [() => focus(true), () => focus(false)];
    fragment.addEventListener('focusin', come);
    fragment.addEventListener('focusout', go);
    return () => {
      fragment.removeEventListener('focusin', come);
      fragment.removeEventListener('focusout', go);
    };
  }, [fragment, focus]);
  useEffect(() => {
    if (fragment === null || typeof IntersectionObserver === 'undefined') return;
    const seen = new Map<Element, boolean>();
    const observer = new IntersectionObserver((entries) => {
      for (const { target, isIntersecting } of entries) seen.set(target, isIntersecting);
      const isSeen = [...seen].some(([element, isIn]) => isIn && element.isConnected);
      see(isSeen);
      if (isSlow) tellSlow(state, isSeen);
    });
    fragment.observeUsing(observer);
    return () => {
      observer.disconnect();
      see(true);
      tellSlow(state, false);
    };
  }, [fragment, see, state, isSlow]);
  return (
    <FollowedContext value={state}>
      {/* biome-ignore lint/complexity/noUselessFragments: its ref watches what lies in it */}
      <Fragment ref={setFragment}>{children}</Fragment>
    </FollowedContext>
  );
};
