import { createContext, useContext } from 'react';
import { type StoreApi, useStore } from 'zustand';
import type { Built, State } from './state.ts';
import type { Bench } from './store.ts';

/** The bench; until it is whole, its state alone. */
export const BenchContext = createContext<Bench | StoreApi<State> | undefined>(undefined);

/** The bench's state as a part of the page follows it, where that is not at each change; see `Resting`. */
export const FollowedContext = createContext<
  Pick<StoreApi<State>, 'getState' | 'subscribe' | 'getInitialState'> | undefined
>(undefined);

/** The bench, or its state alone. Throws where neither is provided. */
export const useStateOrBench = (): Bench | StoreApi<State> => {
  const bench = useContext(BenchContext);
  if (bench === undefined) throw new Error('There is no bench here: wrap the part in a BenchContext.');
  return bench;
};

/** The bench that this part of the page works at. Throws where none is provided, or only its state so far. */
export const useBench = (): Bench => {
  const bench = useStateOrBench();
  if (!('put' in bench)) throw new Error('The bench is not whole yet: show this part with the others that are loaded.');
  return bench;
};

/** Something of the bench's state, and a new rendering when it changes. */
export const useBenchState = <T>(select: (state: State) => T): T => {
  const bench = useStateOrBench();
  return useStore(useContext(FollowedContext) ?? bench, select);
};

/** The last numbers of the job that could be built. */
export const useBuilt = (): Built | undefined => useBenchState((state) => state.built);
