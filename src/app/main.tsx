import { StrictMode, startTransition } from 'react';
import { createRoot } from 'react-dom/client';
import { createStore, type StoreApi } from 'zustand/vanilla';
import { firstLook } from './first-look.ts';
import type { Keep } from './keep/keep.ts';
import { Room } from './Room.tsx';
import { KeepContext } from './shelf/use-keep.ts';
import type { State } from './state.ts';
import type { Bench } from './store.ts';
import { BenchContext } from './use-bench.ts';
import type { Parts } from './use-parts.ts';
import './app.css';

const root = createRoot(document.getElementById('app') as HTMLElement);

const show = (bench: Bench | StoreApi<State>, parts?: Parts, keep?: Keep) =>
  root.render(
    <StrictMode>
      <BenchContext value={bench}>
        <KeepContext value={keep}>
          <Room {...(parts && { parts })} />
        </KeepContext>
      </BenchContext>
    </StrictMode>,
  );

/** Once what is on its way to the screen has been painted. */
const painted = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));

/** All that can be done with the drawing. Not awaited where this module begins: what it loads asks for this module's own chunk. */
const follow = async () => {
  const { makeWhole } = await import('./whole.ts');
  const { bench, parts, keep } = await makeWhole();
  startTransition(() => show(bench, parts, keep));
};

// The drawing comes first; all else follows as soon as it is painted.
const first = firstLook(
  () => window.sessionStorage,
  () => window.localStorage,
);
if (first) show(createStore(() => first));
painted().then(follow);
