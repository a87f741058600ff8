import { StrictMode, startTransition } from 'react';
import { flushSync } from 'react-dom';
import { createRoot } from 'react-dom/client';
import { createStore, type StoreApi } from 'zustand/vanilla';
import { Guard } from './crash/Guard.tsx';
import { Wreck } from './crash/Wreck.tsx';
import { firstLook } from './first-look.ts';
import type { Keep } from './keep/keep.ts';
import { Room, steps } from './Room.tsx';
import { KeepContext } from './shelf/use-keep.ts';
import type { State } from './state.ts';
import type { Bench } from './store.ts';
import { BenchContext } from './use-bench.ts';
import type { Parts } from './use-parts.ts';
import './app.css';

const root = createRoot(document.getElementById('app') as HTMLElement);

const show = (bench: Bench | StoreApi<State>, parts?: Parts, keep?: Keep, step?: number) =>
  root.render(
    <StrictMode>
      <Guard
        onBroken={keep?.flush}
        instead={(error) => <Wreck error={error} job={bench.getState().job} flush={keep?.flush} />}
      >
        <BenchContext value={bench}>
          <KeepContext value={keep}>
            <Room {...(parts && { parts })} {...(step !== undefined && { step })} />
          </KeepContext>
        </BenchContext>
      </Guard>
    </StrictMode>,
  );

/** The longest that is waited for a painting, ms: none comes while the page lies in the background. */
const patience = 1000;

/** Once there is something to be seen: what is loaded then takes nothing from it. */
const firstPainted = () =>
  new Promise<void>((done) => {
    const observer = new PerformanceObserver((list) => {
      if (list.getEntriesByName('first-contentful-paint').length === 0) return;
      observer.disconnect();
      done();
    });
    observer.observe({ type: 'paint', buffered: true });
    setTimeout(done, patience);
  });

/** Once what is on its way to the screen has been painted. */
const painted = () =>
  new Promise<void>((done) => {
    requestAnimationFrame(() => setTimeout(done));
    setTimeout(done, patience);
  });

/** All that can be done with the drawing. Not awaited where this module begins: what it loads asks for this module's own chunk. */
const follow = async () => {
  const { makeWhole } = await import('./whole.ts');
  const { bench, parts, keep } = await makeWhole();
  for (const step of Object.values(steps)) {
    startTransition(() => show(bench, parts, keep, step));
    await painted();
  }
};

// The drawing comes first; all else follows as soon as it is painted.
const first = firstLook(
  () => window.sessionStorage,
  () => window.localStorage,
);
if (first) flushSync(() => show(createStore(() => first)));
(first ? firstPainted().then(follow) : follow()).catch((error) =>
  root.render(<Wreck error={error} job={first?.job} />),
);
