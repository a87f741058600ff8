import { putWreck } from './crash/put-wreck.ts';
import { drawFirst } from './first/draw.ts';
import { firstLook } from './first-look.ts';
import { firstPainted } from './painted.ts';
import type { First } from './take-over.tsx';
import './app.css';

const app = document.getElementById('app') as HTMLElement;

/** The drawing as far as it can be shown before all else; undefined where that can only be told later. */
const show = (): First | undefined => {
  const state = firstLook(
    () => window.sessionStorage,
    () => window.localStorage,
    navigator.languages,
  );
  return state?.built && { state, paper: drawFirst(app, state.built) };
};

/** All that works with the drawing, once that is painted: what is loaded then takes nothing from it. Not awaited where this module begins: what it loads asks for this module's own chunk. */
const follow = async (first: First | undefined) => {
  if (first) await firstPainted();
  // Two, so that neither takes long to begin with.
  const hands = import('./take-over.tsx');
  const whole = import('./whole.ts');
  await Promise.all([hands.then(({ takeOver }) => takeOver(app, first, whole)), whole]);
};

const first = show();
// What is pressed on it before it is taken over would come to nothing.
app.inert = first !== undefined;
follow(first).catch((error) => {
  app.inert = false;
  putWreck(app, { error, job: first?.state.job });
});
