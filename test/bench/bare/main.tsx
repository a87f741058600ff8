import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';

// The least that the app's own tools make of React: what the app's beginning is held against.
createRoot(document.getElementById('app') as HTMLElement).render(
  <StrictMode>
    <p>Empty</p>
  </StrictMode>,
);
