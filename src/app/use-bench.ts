import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { Bench, State } from './store.ts';

export const BenchContext = createContext<Bench | undefined>(undefined);

/** The bench that this part of the page works at. Throws where none is provided. */
export const useBench = (): Bench => {
  const bench = useContext(BenchContext);
  if (bench === undefined) throw new Error('There is no bench here: wrap the part in a BenchContext.');
  return bench;
};

/** Something of the bench's state, and a new rendering when it changes. */

export const useBenchState = <T>(select: (state: State) => T): T => useStore(useBench(), select);
