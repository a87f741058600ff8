import { lazy, Suspense, useEffect, useState } from 'react';
import { AskContext, type Asked } from './figures/ask.ts';
import { firstWords as words } from './first-words.ts';
import { Sheet } from './sheet/Sheet.tsx';
import { useKeep } from './shelf/use-keep.ts';
import { useBenchState } from './use-bench.ts';
import { type Parts, PartsContext } from './use-parts.ts';

/** Loaded when it is first asked for. */
const Shelf = lazy(async () => ({ default: (await import('./shelf/Shelf.tsx')).Shelf }));

/** The order in which the page is put up, so that no step takes long: the drawing; what is typed; the strings and the set-up; what comes of it all. */
export const steps = { drawing: 0, numbers: 1, works: 2, results: 3 } as const;

/** The whole bench: the drawing at once, and in their places all other parts as soon as they are there, as far as a step. */
export const Room = ({ parts, step = steps.results }: { parts?: Parts; step?: number }) => {
  const name = useBenchState((state) => state.job.name);
  const built = useBenchState((state) => state.built);
  const keep = useKeep();
  const [isSaving, setSaving] = useState(false);
  const [isShelfOpen, setShelfOpen] = useState(false);
  const [asked, setAsked] = useState<Asked | undefined>();

  useEffect(() => {
    document.title = words.documentTitle(name);
  }, [name]);

  return (
    <PartsContext value={parts}>
      <AskContext value={setAsked}>
        <div className="bench">
          {parts ? (
            <parts.Bar onTemplates={() => setSaving(true)} onShelf={keep && (() => setShelfOpen(true))} />
          ) : (
            <header className="bar" />
          )}
          {parts && <parts.Notices />}
          {parts && <parts.Keys />}
          {parts && <parts.InSight />}
          <main>
            <div className="stage">
              <Sheet />
              {parts ? <parts.Help /> : <div className="help" />}
            </div>
            {parts && step >= steps.numbers ? <parts.Numbers /> : <div className="numbers" />}
            <div className="below">
              <div className="works">
                {parts && step >= steps.works ? (
                  <>
                    <parts.Compare />
                    <parts.Strings />
                    <parts.SetUp />
                  </>
                ) : (
                  <div className="to-come" />
                )}
              </div>
              <div className="results">
                {parts && step >= steps.results && <parts.Findings />}
                {parts && step >= steps.results && <parts.Outcome />}
              </div>
            </div>
          </main>
          {parts && isSaving && <parts.Templates onClose={() => setSaving(false)} />}
          {parts && keep && isShelfOpen && (
            <Suspense>
              <Shelf keep={keep} onClose={() => setShelfOpen(false)} />
            </Suspense>
          )}
          {parts && asked && built && (
            <parts.HowDialog asked={asked} built={built} onClose={() => setAsked(undefined)} />
          )}
        </div>
      </AskContext>
    </PartsContext>
  );
};
