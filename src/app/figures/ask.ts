import { createContext } from 'react';

/** A figure that is asked about, and of which string. */
export interface Asked {
  readonly id: string;
  readonly k: number;
}

/** Asks how a figure came about. */
export const AskContext = createContext<(asked: Asked) => void>(() => {});
