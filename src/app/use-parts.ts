import { createContext, useContext } from 'react';

export type Parts = typeof import('./parts.ts').parts;

/** What of the page is loaded besides the drawing: nothing at first. */
export const PartsContext = createContext<Parts | undefined>(undefined);

/** The parts of the page that are loaded after the first drawing; undefined until then. */
export const useParts = (): Parts | undefined => useContext(PartsContext);
