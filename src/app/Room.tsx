import { lazy, type ReactNode, Suspense, useEffect, useRef, useState } from 'react';
import type { BrokenPart } from './crash/Broken.tsx';
import { Guard } from './crash/Guard.tsx';
import { AskContext, type Asked } from './figures/ask.ts';
import type { Paper } from './first/draw.ts';
import { firstWords as words } from './first-words.ts';
import { drawer } from './media.ts';
import { Resting } from './Resting.tsx';
import type { HeldShop } from './save/Templates.tsx';
import { Sheet } from './sheet/Sheet.tsx';
import { useKeep } from './shelf/use-keep.ts';
import { useBenchState } from './use-bench.ts';
import { useMedia } from './use-media.ts';
import { type Parts, PartsContext, useParts } from './use-parts.ts';

/** Loaded when they are first asked for. */
const Shelf = lazy(async () => ({ default: (await import('./shelf/Shelf.tsx')).Shelf }));
const NewJob = lazy(async () => ({ default: (await import('./newjob/NewJob.tsx')).NewJob }));
const Templates = lazy(async () => ({ default: (await import('./save/Templates.tsx')).Templates }));

/** A part of the page that leaves the others as they are if it breaks. */
const Guarded = ({ part, onClose, children }: { part: BrokenPart; onClose?: () => void; children: ReactNode }) => {
  const job = useBenchState((state) => state.job);
  const parts = useParts();
  return (
    <Guard
      of={job}
      instead={(error, again) => parts && <parts.Broken part={part} error={error} onAgain={onClose ?? again} />}
    >
      {children}
    </Guard>
  );
};

/** How the figure that was asked about came to be. */
const How = ({ asked, onClose }: { asked: Asked; onClose: () => void }) => {
  const built = useBenchState((state) => state.built);
  const parts = useParts();
  return (
    parts &&
    built && (
      <Guarded part="dialog" onClose={onClose}>
        <parts.HowDialog asked={asked} built={built} onClose={onClose} />
      </Guarded>
    )
  );
};

/** The order in which the page is put up, so that no step takes long: the drawing; what is typed; the strings and the set-up; what comes of it all. */
export const steps = { drawing: 0, numbers: 1, works: 2, results: 3 } as const;

interface RoomProps {
  readonly parts?: Parts | undefined;
  readonly step?: number | undefined;
  /** The paper of the first drawing, which is taken over. */
  readonly first?: Paper | undefined;
}

/** The whole bench: the drawing at once, and in their places all other parts as soon as they are there, as far as a step. */
export const Room = ({ parts, step = steps.results, first }: RoomProps) => {
  const name = useBenchState((state) => state.job.name);
  const keep = useKeep();
  const hasDrawer = useMedia(drawer);
  /** What lies under the open drawer, or would scroll away from it, cannot be reached till it is closed. */
  const isUnder = useBenchState((state) => state.isDrawerOpen) && hasDrawer;
  const [isSaving, setSaving] = useState(false);
  const shop = useRef<HeldShop>({});
  const [isShelfOpen, setShelfOpen] = useState(false);
  const [isBeginning, setBeginning] = useState(false);
  const [asked, setAsked] = useState<Asked | undefined>();

  useEffect(() => {
    document.title = words.documentTitle(name);
  }, [name]);

  const closeSaving = () => setSaving(false);
  const closeShelf = () => setShelfOpen(false);
  const closeBeginning = () => setBeginning(false);
  const closeAsked = () => setAsked(undefined);

  return (
    <PartsContext value={parts}>
      <AskContext value={setAsked}>
        <div className="bench" data-drawer={isUnder}>
          {parts && <parts.Skips />}
          <div className="head" inert={isUnder}>
            {parts ? (
              <parts.Bar
                onTemplates={() => setSaving(true)}
                onNew={() => setBeginning(true)}
                onShelf={keep && (() => setShelfOpen(true))}
              />
            ) : (
              <header className="bar" />
            )}
            {parts && <parts.Notices />}
          </div>
          {parts && <parts.Keys />}
          {parts && <parts.InSight />}
          <main>
            {/* Apart from the bar, which cannot be reached while the drawer is open. */}
            <h1 className="unseen">{words.name}</h1>
            <div className="stage">
              <Guarded part="drawing">
                <Sheet first={first} />
              </Guarded>
              {hasDrawer && <div className="opener">{parts && <parts.Opener />}</div>}
              {parts ? <parts.Help /> : <div className="help" />}
            </div>
            {parts && step >= steps.numbers ? (
              hasDrawer ? (
                <parts.Drawer>
                  <Guarded part="numbers">
                    <parts.Numbers />
                  </Guarded>
                </parts.Drawer>
              ) : (
                <Guarded part="numbers">
                  <parts.Numbers />
                </Guarded>
              )
            ) : (
              !hasDrawer && <div className="numbers" />
            )}
            <div className="below" inert={isUnder}>
              <div className="works">
                {parts && step >= steps.works ? (
                  <>
                    <Guarded part="works">
                      <Resting>
                        <parts.Compare />
                      </Resting>
                    </Guarded>
                    <Guarded part="works">
                      <Resting>
                        <parts.Strings />
                      </Resting>
                    </Guarded>
                    <Guarded part="works">
                      <Resting>
                        <parts.SetUp />
                      </Resting>
                    </Guarded>
                  </>
                ) : (
                  <div className="to-come" />
                )}
              </div>
              <div className="results">
                {parts && step >= steps.results && (
                  <Guarded part="results">
                    <Resting>
                      <parts.Findings />
                    </Resting>
                  </Guarded>
                )}
                {parts && step >= steps.results && (
                  <Guarded part="results">
                    <Resting>
                      <parts.Outcome />
                    </Resting>
                  </Guarded>
                )}
              </div>
            </div>
          </main>
          {parts && isSaving && (
            <Guarded part="dialog" onClose={closeSaving}>
              <Suspense>
                <Templates keep={keep} held={shop.current} onClose={closeSaving} />
              </Suspense>
            </Guarded>
          )}
          {parts && isBeginning && (
            <Guarded part="dialog" onClose={closeBeginning}>
              <Suspense>
                <NewJob onClose={closeBeginning} />
              </Suspense>
            </Guarded>
          )}
          {parts && keep && isShelfOpen && (
            <Guarded part="dialog" onClose={closeShelf}>
              <Suspense>
                <Shelf keep={keep} onClose={closeShelf} />
              </Suspense>
            </Guarded>
          )}
          {asked && <How asked={asked} onClose={closeAsked} />}
        </div>
      </AskContext>
    </PartsContext>
  );
};
