import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { keep, restore } from './memory.ts';
import { createBench } from './store.ts';
import { BenchContext } from './use-bench.ts';
import './app.css';

const getStorage = () => window.localStorage;
const bench = createBench(restore(getStorage));
const { flush } = keep(bench, getStorage);
window.addEventListener('pagehide', flush);
document.addEventListener('visibilitychange', flush);

createRoot(document.getElementById('app') as HTMLElement).render(
  <StrictMode>
    <BenchContext value={bench}>
      <App />
    </BenchContext>
  </StrictMode>,
);
