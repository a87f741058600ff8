import { type KeyboardEvent, type ReactNode, useEffect, useRef } from 'react';
import { heads } from '../skips/heads.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { drawerId, openerId } from './ids.ts';

const says = words.drawer;

/** The numbers where there is no room for them beside the sheet: they slide in under it, or beside it where the window is low. */
export const Drawer = ({ children }: { children: ReactNode }) => {
  const bench = useBench();
  const isOpen = useBenchState((state) => state.isDrawerOpen);
  const head = useRef<HTMLHeadingElement>(null);
  const wasOpen = useRef(isOpen);
  // The focus goes in with it, unless it has gone to a field, and back out to what opened it.
  useEffect(() => {
    if (isOpen === wasOpen.current) return;
    wasOpen.current = isOpen;
    const isInside = document.activeElement?.closest(`#${drawerId}`) != null;
    if (isOpen && !isInside) head.current?.focus({ preventScroll: true });
    if (!isOpen && (isInside || document.activeElement === document.body))
      document.getElementById(openerId)?.focus({ preventScroll: true });
  }, [isOpen]);
  /** Escape puts back what is being typed; where nothing is, it closes the drawer. */
  const onKey = (event: KeyboardEvent) => {
    const { focus, drafts } = bench.getState();
    if (event.key !== 'Escape' || (focus !== undefined && drafts[focus] !== undefined)) return;
    event.stopPropagation();
    bench.openDrawer(false);
  };
  return (
    <div className="drawer" id={drawerId} inert={!isOpen} data-open={isOpen} onKeyDownCapture={onKey}>
      <div className="drawer-head">
        <h2 ref={head} id={heads.numbers.id} tabIndex={-1}>
          {words.numbers.label}
        </h2>
        <button type="button" onClick={() => bench.openDrawer(false)}>
          {says.close}
        </button>
      </div>
      {children}
    </div>
  );
};
