import { createContext, useContext } from 'react';
import type { Keep } from '../keep/keep.ts';

export const KeepContext = createContext<Keep | undefined>(undefined);

/** What keeps the jobs; nothing where the browser keeps nothing. */
export const useKeep = (): Keep | undefined => useContext(KeepContext);
