import { Steps } from '../steps/Steps.tsx';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { drawerId, openerId } from './ids.ts';

/** The row under the sheet: the steps back and forth, and what opens the drawer with the numbers. */
export const Opener = () => {
  const bench = useBench();
  const isOpen = useBenchState((state) => state.isDrawerOpen);
  return (
    <>
      <Steps />
      <button
        type="button"
        className={isOpen ? undefined : 'primary'}
        id={openerId}
        aria-expanded={isOpen}
        aria-controls={drawerId}
        onClick={() => bench.openDrawer(!isOpen)}
      >
        {words.drawer.open}
      </button>
    </>
  );
};
