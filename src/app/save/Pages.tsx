import { type KeyboardEvent, useState } from 'react';
import { paperOf } from '../../../templates/paper.ts';
import type { Sheet } from '../../../templates/sheets.ts';
import { showAsRead } from '../decimal.ts';
import { CardDialog } from '../sheet/tools/CardDialog.tsx';
import { referencePx } from '../sheet/tools/screen.ts';
import { useScreen } from '../sheet/tools/use-screen.ts';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { SheetPicture } from './SheetPicture.tsx';
import { useShopState } from './shop-store.ts';
import type { LaidNow } from './use-laid.ts';

const says = words.templates;

/** The templates that are parted over pages, and over how many each. */
const partedOf = (sheets: readonly Sheet[]): readonly (readonly [title: string, pages: number])[] => {
  const counts = new Map<string, number>();
  for (const { partOf } of sheets) if (partOf !== undefined) counts.set(partOf, (counts.get(partOf) ?? 0) + 1);
  return [...counts];
};

/** Where a key leads from a page; undefined for a key that turns none. */
const turned = (key: string, at: number, last: number): number | undefined =>
  ({ PageUp: Math.max(0, at - 1), PageDown: Math.min(last, at + 1), Home: 0, End: last })[key];

interface Props extends LaidNow {
  /** Which page is asked for, from 0; the last where there are fewer. */
  readonly wanted: number;
  readonly onWanted: (page: number) => void;
}

/** Which of the pages is on show, from 0; -1 where there is none. */
export const pageAt = (wanted: number, sheets: readonly Sheet[]): number => Math.min(wanted, sheets.length - 1);

/** Each page as it is printed, one at a time, whole or at true size. */
export const Pages = ({ laid, isOld, wanted, onWanted }: Props) => {
  const { decimal } = useBenchState(showAsRead);
  const paper = useShopState(({ shop }) => paperOf(shop, decimal).name);
  const [screen, measure] = useScreen();
  const [isTrue, setTrue] = useState(false);
  const [isMeasuring, setMeasuring] = useState(false);
  const sheets = laid?.sheets ?? [];
  const last = sheets.length - 1;
  const at = Math.max(0, pageAt(wanted, sheets));
  const sheet = sheets[at];
  const parted = partedOf(sheets);
  const numbered = sheets.map((one, page) => ({ page, called: says.pageSays(page + 1, sheets.length, one.title) }));
  const title = numbered[at]?.called;
  const onKeyDown = (event: KeyboardEvent) => {
    const to = turned(event.key, at, last);
    if (to === undefined) return;
    event.preventDefault();
    onWanted(to);
  };
  return (
    <section className="pages" aria-label={says.pagesLabel} data-old={isOld}>
      <p role="status">
        {laid === undefined
          ? says.laying
          : (laid.says ?? (sheets.length === 0 ? says.noneTicked : says.sheets(sheets.length, paper)))}{' '}
        {parted.length > 0 && says.parted(parted)}
      </p>
      {sheet && title !== undefined && (
        <>
          <div className="acts">
            <button type="button" aria-disabled={at === 0} onClick={() => onWanted(Math.max(0, at - 1))}>
              {says.earlier}
            </button>
            <button type="button" aria-disabled={at === last} onClick={() => onWanted(Math.min(last, at + 1))}>
              {says.later}
            </button>
            <label>
              <span className="unseen">{says.page}</span>
              <select value={at} onChange={({ target }) => onWanted(Number(target.value))}>
                {numbered.map(({ called, page }) => (
                  <option key={called} value={page}>
                    {called}
                  </option>
                ))}
              </select>
            </label>
            <span className="together">
              <button type="button" aria-pressed={!isTrue} onClick={() => setTrue(false)}>
                {says.fitted}
              </button>
              <button type="button" aria-pressed={isTrue} onClick={() => setTrue(true)}>
                {says.trueSize}
              </button>
            </span>
          </div>
          {isTrue && (
            <p className="acts small">
              {screen ? says.isTrue : says.nearlyTrue}
              <button type="button" onClick={() => setMeasuring(true)}>
                {screen ? says.measureAgain : says.measure}
              </button>
            </p>
          )}
          {/* biome-ignore lint/a11y/useSemanticElements: a group of one drawing that can be scrolled and has its own keys. */}
          <div
            className="page-frame"
            role="group"
            aria-label={says.pageKeys(title)}
            // biome-ignore lint/a11y/noNoninteractiveTabindex: what can be scrolled must be reached by keys.
            tabIndex={0}
            onKeyDown={onKeyDown}
            data-true={isTrue}
          >
            <SheetPicture sheet={sheet} title={title} {...(isTrue && { pxPerMm: screen?.pxPerMm ?? referencePx })} />
          </div>
        </>
      )}
      {isMeasuring && (
        <CardDialog
          pxPerMm={screen?.pxPerMm}
          onMeasured={(pxPerMm) => {
            measure(pxPerMm);
            setMeasuring(false);
          }}
          onClose={() => setMeasuring(false)}
        />
      )}
    </section>
  );
};
