import { StrictMode, startTransition, useEffect } from 'react';
import { createRoot, hydrateRoot, type Root } from 'react-dom/client';
import { createStore, type StoreApi } from 'zustand/vanilla';
import { Guard } from './crash/Guard.tsx';
import { Wreck } from './crash/Wreck.tsx';
import type { Paper } from './first/draw.ts';
import type { Keep } from './keep/keep.ts';
import { painted } from './painted.ts';
import { Room, steps } from './Room.tsx';
import { KeepContext } from './shelf/use-keep.ts';
import type { State } from './state.ts';
import type { Bench } from './store.ts';
import { BenchContext } from './use-bench.ts';
import type { Parts } from './use-parts.ts';

/** What stands on the page already: how the bench stands, and the paper that its drawing is on. */
export interface First {
  readonly state: State;
  readonly paper: Paper;
}

interface PageProps {
  readonly bench: Bench | StoreApi<State>;
  readonly keep?: Keep | undefined;
  readonly first?: First | undefined;
  readonly parts?: Parts;
  readonly step?: number;
  /** Called when it stands on the page. */
  readonly onPut?: () => void;
}

const Page = ({ bench, keep, first, onPut, ...room }: PageProps) => {
  useEffect(() => onPut?.(), [onPut]);
  return (
    <StrictMode>
      <Guard
        onBroken={keep?.flush}
        instead={(error) => <Wreck error={error} job={bench.getState().job} flush={keep?.flush} />}
      >
        <BenchContext value={bench}>
          <KeepContext value={keep}>
            <Room {...room} first={first?.paper} />
          </KeepContext>
        </BenchContext>
      </Guard>
    </StrictMode>
  );
};

/** Works with the first drawing from now on, element by element as it stands; with a page of its own where there is none. */
const begin = async (app: HTMLElement, first: First | undefined): Promise<Root> => {
  if (first === undefined) return createRoot(app);
  const bench = createStore(() => first.state);
  let root: Root | undefined;
  await new Promise<void>((done) =>
    // As a transition it leaves the page its hands free.
    startTransition(() => {
      root = hydrateRoot(app, <Page bench={bench} first={first} onPut={done} />);
    }),
  );
  app.inert = false;
  return root as unknown as Root;
};

/** Brings all that can be done with the drawing: the whole bench with its parts, put up step by step. */
export const takeOver = async (
  app: HTMLElement,
  first: First | undefined,
  parts: Promise<typeof import('./whole.ts')>,
): Promise<void> => {
  const [root, { page, advised }] = await Promise.all([begin(app, first), parts.then(({ makeWhole }) => makeWhole())]);
  for (const step of Object.values(steps)) {
    // What comes of it all stands there in one piece, so that nothing of it moves.
    if (step === steps.results) await advised;
    startTransition(() => root.render(<Page {...page} first={first} step={step} />));
    await painted();
  }
};
