import { useEffect, useRef, useState } from 'react';
import { fieldAt } from '../../../geometry/fields.ts';
import { fileName } from '../../../geometry/names.ts';
import { paperOf } from '../../../templates/paper.ts';
import { printedOf } from '../../../templates/pieces/index.ts';
import type { Piece } from '../../../templates/pieces/piece.ts';
import { shopSchema } from '../../../templates/shop/index.ts';
import { chosenPrinter } from '../../../templates/shop/printers.ts';
import { showAsRead } from '../decimal.ts';
import { chooseFolder } from '../folder.ts';
import type { Keep } from '../keep/keep.ts';
import { Refused } from '../sheet/Refused.tsx';
import type { Built } from '../store.ts';
import { useBenchState } from '../use-bench.ts';
import { useMedia } from '../use-media.ts';
import { words } from '../words.ts';
import { Cutter } from './Cutter.tsx';
import { saveBlob, saveText, type TextFile } from './files.ts';
import { Pages, pageAt } from './Pages.tsx';
import { Pieces } from './Pieces.tsx';
import { Printer } from './Printer.tsx';
import type { Progress } from './paper-work.ts';
import { refusedSettings } from './refused-settings.ts';
import { Settings, ShopTrouble } from './Settings.tsx';
import { createShopStore, ShopContext, type ShopStore, useShopState, useShopStore } from './shop-store.ts';
import { Tabs } from './Tabs.tsx';
import { useLaid } from './use-laid.ts';

const says = words.templates;
type Tab = keyof typeof says.tabs;

/** Wide enough for the pages to stand beside what is chosen. */
const wide = '(min-width: 1080px)';

/** Settings whose typed text cannot be used, and with which values the templates are drawn instead. */
const RefusedSettings = () => {
  const show = useBenchState(showAsRead);
  const refused = useShopState((state) => refusedSettings(state, show).join('\n'));
  if (refused === '') return null;
  return (
    <div className="stale">
      {refused.split('\n').map((one) => (
        <p key={one}>{one}</p>
      ))}
    </div>
  );
};

const PaperChoice = () => {
  const store = useShopStore();
  const size = useShopState(({ shop }) => shop.paper.size);
  return (
    <label>
      <span>{says.paper}</span>
      <select value={size} onChange={({ target }) => store.put('paper.size', target.value)}>
        {Object.entries(fieldAt('paper.size', shopSchema)?.choices ?? {}).map(([id, name]) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
};

/** A work that takes its time: how far it has come, and what stops it. */
interface Work extends Progress {
  readonly stop: () => void;
}

/** What came of it, and what is to be said besides. */
interface Done {
  readonly says: string;
  readonly details?: readonly string[];
}

/** The files that are made, one at a time, and what is said of it. */
const useWork = () => {
  const [work, setWork] = useState<Work | undefined>();
  const [done, setDone] = useState<Done>({ says: '' });
  const stop = work?.stop;
  const latest = useRef<(() => void) | undefined>(undefined);
  latest.current = stop;
  useEffect(() => () => latest.current?.(), []);

  /** Makes files and says what came of it: `make` hears how a stop is told, and gives what is to be said. */
  const run = async (make: (begin: (stop: () => void) => (progress: Progress) => void) => Promise<Done>) => {
    setDone({ says: '' });
    try {
      setDone(
        await make((stopIt) => {
          setWork({ says: '', share: 0, stop: stopIt });
          return (progress) => setWork({ ...progress, stop: stopIt });
        }),
      );
    } catch (error) {
      setDone({ says: says.failed(error instanceof Error ? error.message : String(error)) });
    } finally {
      setWork(undefined);
    }
  };
  return { work, done, run };
};

const svgType = 'image/svg+xml';

const Body = ({ onClose }: { onClose: () => void }) => {
  const store = useShopStore();
  const dialog = useRef<HTMLDialogElement>(null);
  const built = useBenchState((state) => (state.solved.ok ? state.built : undefined));
  const shop = useShopState((state) => state.shop);
  const { decimal } = useBenchState(showAsRead);
  const isWide = useMedia(wide);
  const [chosen, setTab] = useState<Tab>('pieces');
  const { work, done, run } = useWork();
  const laidNow = useLaid(built?.job, shop);
  const [wanted, setWanted] = useState(0);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);

  const tabs = (Object.keys(says.tabs) as Tab[]).filter((id) => id !== 'pages' || (!isWide && built));
  const tab = tabs.includes(chosen) ? chosen : 'pieces';
  const printer = chosenPrinter(shop.printers);
  const nameOf = ({ job }: Built, name: string) => `${fileName(job.name)}-${name}`;
  /** One file as it is; several in one ZIP file, called `zipped`: a browser lets only some through where a press saves many. */
  const saveAll = async (of: Built, files: readonly TextFile[], zipped: string): Promise<string> => {
    const named = files.map(({ name, text }) => ({ name: `${nameOf(of, name)}.svg`, text }));
    const [one, ...others] = named;
    if (one && others.length === 0) saveText(one.text, svgType, one.name);
    if (others.length === 0) return says.done(named.map(({ name }) => name));
    const { zipOf } = await import('./zip.ts');
    const zip = `${nameOf(of, zipped)}.zip`;
    saveBlob([zipOf(named)], 'application/zip', zip);
    return says.zipped(
      zip,
      files.map(({ name }) => name),
    );
  };

  const savePdf = (of: Built) =>
    run(async (begin) => {
      const { writePdf } = await import('./pdf.ts');
      let tell: (progress: Progress) => void = () => {};
      const writing = writePdf(of.job, shop, (progress) => tell(progress));
      tell = begin(writing.stop);
      const file = await writing.done;
      if (file === undefined) return { says: says.stopped };
      const name = `${nameOf(of, `templates-${fileName(paperOf(shop).name).toLowerCase()}`)}.pdf`;
      saveBlob([file.bytes], 'application/pdf', name);
      return { says: says.done([name]), details: file.lacking.length > 0 ? [says.lacking(file.lacking)] : [] };
    });
  const saveSvg = (of: Built, piece?: Piece) =>
    run(async () => {
      const { pieceSvgs, viewsSvg } = await import('./svg.ts');
      const files = piece ? pieceSvgs(of, piece, shop) : viewsSvg(of);
      return { says: await saveAll(of, files, piece?.id ?? 'views') };
    });
  /** Templates for the cutter, handed over by `save`, which says what came of it. */
  const cut = (of: Built, some: readonly Piece[], save: (files: readonly TextFile[]) => Promise<string>) =>
    run(async (begin) => {
      let isStopped = false;
      const tell = begin(() => {
        isStopped = true;
      });
      const { cutAll } = await import('./cutter.ts');
      const made = await cutAll(of, some, shop, { tell, isStopped: () => isStopped });
      if (made === undefined) return { says: says.stopped };
      return {
        says: made.files.length > 0 ? await save(made.files) : words.cutter.nothingSaved,
        details: made.problems,
      };
    });
  const cutInto = async (of: Built, some: readonly Piece[]) => {
    // Asked for at once: the browser lets a page do so only right after a press.
    const folder = await chooseFolder();
    if (folder === undefined) return;
    await cut(of, some, async (files) => {
      for (const { name, text } of files) await folder.write(`${nameOf(of, name)}.svg`, text);
      return words.cutter.savedInto(files.length, folder.name);
    });
  };
  const ticked = built ? printedOf(built.job, shop).filter(({ ownPage }) => !ownPage) : [];
  const isBusy = work !== undefined;
  const sheets = laidNow.laid?.sheets ?? [];
  const turnTo = (page: number) => {
    setWanted(page);
    const { proof } = store.getState();
    if (Object.values(proof.texts).every((text) => text.trim() === '')) store.typeProof({ lies: undefined });
  };
  const pages = <Pages {...laidNow} wanted={wanted} onWanted={turnTo} />;

  return (
    <dialog className="templates" ref={dialog} aria-labelledby="templates-title" onClose={onClose}>
      <header>
        <h2 id="templates-title">{says.title}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          {says.close}
        </button>
        {built === undefined ? (
          <p className="stale">{says.stale}</p>
        ) : (
          <div className="way">
            <PaperChoice />
            <button type="button" className="primary" disabled={isBusy} onClick={() => savePdf(built)}>
              {says.pdf}
            </button>
            {work && (
              <button type="button" onClick={work.stop}>
                {says.stop}
              </button>
            )}
            <p className="small">
              {shop.paper.size === 'typed' && says.typedSize(paperOf(shop, decimal).name)} {says.pdfSays(printer)}
            </p>
          </div>
        )}
        {work && <progress value={work.share} aria-label={says.title} />}
        <div className="status" role="status">
          <p>{work?.says ?? done.says}</p>
          {!work && done.details && done.details.length > 0 && (
            <ul>
              {done.details.map((one) => (
                <li key={one}>{one}</li>
              ))}
            </ul>
          )}
        </div>
        <Refused />
        <RefusedSettings />
        <ShopTrouble />
      </header>
      <div className="choosing">
        <Tabs label={says.parts} tabs={tabs.map((id) => [id, says.tabs[id]] as const)} chosen={tab} onChoose={setTab}>
          {tab === 'pieces' && built && (
            <>
              <Pieces
                built={built}
                pictures={laidNow.laid?.pictures ?? {}}
                isBusy={isBusy}
                onSvg={(piece) => saveSvg(built, piece)}
                onCut={(piece) => cut(built, [piece], (files) => saveAll(built, files, `${piece.id}-cutter`))}
                onViews={() => saveSvg(built)}
              />
              <h3>{says.cautionsTitle}</h3>
              <ul className="cautions">
                {says.cautions.map((caution) => (
                  <li key={caution}>{caution}</li>
                ))}
              </ul>
            </>
          )}
          {tab === 'pages' && built && pages}
          {tab === 'printer' && <Printer sheets={sheets} shown={sheets[pageAt(wanted, sheets)]} />}
          {tab === 'cutter' && (
            <Cutter
              count={ticked.length}
              isBusy={isBusy}
              onSave={() => built && cut(built, ticked, (files) => saveAll(built, files, 'cutter'))}
              onFolder={() => built && cutInto(built, ticked)}
            />
          )}
          {tab === 'settings' && <Settings />}
        </Tabs>
      </div>
      {isWide && built && pages}
    </dialog>
  );
};

/** The shop that lasts as long as the page, whether the dialog is open or not. */
export interface HeldShop {
  current?: ShopStore;
}

/** The whole way to paper and cutter: which templates, on which paper, page by page as they are printed, the printer, the cutter and the shop's settings. */
export const Templates = ({ keep, held, onClose }: { keep: Keep | undefined; held: HeldShop; onClose: () => void }) => {
  const [store] = useState(() => {
    held.current ??= createShopStore(keep?.db, navigator.languages);
    return held.current;
  });
  const [isRead, setRead] = useState(false);
  useEffect(() => {
    void store.load().then(() => setRead(true));
  }, [store]);
  if (!isRead) return null;
  return (
    <ShopContext value={store}>
      <Body onClose={onClose} />
    </ShopContext>
  );
};
