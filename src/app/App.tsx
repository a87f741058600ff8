import { type DragEvent, lazy, Suspense, useEffect, useState } from 'react';
import { Bar } from './bar/Bar.tsx';
import { AskContext } from './figures/Figure.tsx';
import { type Asked, HowDialog } from './figures/HowDialog.tsx';
import { Findings } from './findings/Findings.tsx';
import { Notices } from './Notices.tsx';
import { Help } from './numbers/Help.tsx';
import { Numbers } from './numbers/Numbers.tsx';
import { Strings } from './numbers/Strings.tsx';
import { Outcome } from './outcome/Outcome.tsx';
import { Templates } from './save/Templates.tsx';
import { SetUp } from './setup/SetUp.tsx';
import { Sheet } from './sheet/Sheet.tsx';
import { useBench, useBenchState } from './use-bench.ts';
import { useInSight } from './use-in-sight.ts';
import { words } from './words.ts';

const holdsFile = ({ dataTransfer }: DragEvent): boolean => dataTransfer.types.includes('Files');

/** Fetched once the bench stands. */
const Compare = lazy(async () => ({ default: (await import('./compare/Compare.tsx')).Compare }));

/** The whole bench. */
export const App = () => {
  const bench = useBench();
  const name = useBenchState((state) => state.job.name);
  const [isSaving, setSaving] = useState(false);
  const [isOver, setOver] = useState(false);
  const [asked, setAsked] = useState<Asked | undefined>();
  const built = useBenchState((state) => state.built);

  useInSight();
  useEffect(() => {
    document.title = words.documentTitle(name);
  }, [name]);

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.key.toLowerCase() !== 'z') return;
      event.preventDefault();
      if (event.shiftKey) bench.redo();
      else bench.undo();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [bench]);

  const onDrop = async (event: DragEvent) => {
    if (!holdsFile(event)) return;
    event.preventDefault();
    setOver(false);
    const file = event.dataTransfer.files[0];
    if (file) bench.open(await file.text(), file.name);
  };

  return (
    <AskContext value={setAsked}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: dropping a file is a second way; “Open job…” is the first */}
      <div
        className="bench"
        data-over={isOver}
        onDragOver={(event) => {
          if (!holdsFile(event)) return;
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={({ currentTarget, relatedTarget }) => {
          if (!(relatedTarget instanceof Node && currentTarget.contains(relatedTarget))) setOver(false);
        }}
        onDrop={onDrop}
      >
        <Bar onTemplates={() => setSaving(true)} />
        <Notices />
        {isOver && <p className="drop">{words.bar.drop}</p>}
        <main>
          <div className="stage">
            <Sheet />
            <Help />
          </div>
          <Numbers />
          <div className="below">
            <div className="works">
              <Suspense>
                <Compare />
              </Suspense>
              <Strings />
              <SetUp />
            </div>
            <div className="results">
              <Findings />
              <Outcome />
            </div>
          </div>
        </main>
        {isSaving && <Templates onClose={() => setSaving(false)} />}
        {asked && built && <HowDialog asked={asked} built={built} onClose={() => setAsked(undefined)} />}
      </div>
    </AskContext>
  );
};
