import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Job } from '../../../geometry/job.ts';
import { today } from '../bar/today.ts';
import { hasFolders } from '../folder.ts';
import type { Card, Place } from '../keep/database.ts';
import type { Keep } from '../keep/keep.ts';
import { cardsOf, clearBin, jobOf, putIn, removeJobs } from '../keep/shelf.ts';
import { saveText } from '../save/files.ts';
import { Share } from '../share/Share.tsx';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { saveIntoFolder } from './folder.ts';
import { openFiles } from './opening.ts';
import { Room } from './Room.tsx';
import { Row, type RowActs } from './Row.tsx';
import { States } from './States.tsx';
import { writeShelf } from './shelf-file.ts';
import { duplicate, goBackTo, openFrom, rename } from './shelf-work.ts';

const says = words.shelf;
const places: readonly Place[] = ['shelf', 'archive', 'bin'];
/** So many rows are drawn at first, and more as the list is scrolled: thousands of jobs open as fast as a few. */
const batch = 40;

/** What was done last and can be taken back. */
interface Done {
  readonly says: string;
  readonly undo?: () => Promise<void>;
}

const holds = (card: Card, asked: string): boolean =>
  asked === '' || `${card.name} ${card.date}`.toLocaleLowerCase().includes(asked.toLocaleLowerCase());

/** All jobs of this device. */
export const Shelf = ({ keep, onClose }: { keep: Keep; onClose: () => void }) => {
  const bench = useBench();
  const here = useBenchState((state) => state.id);
  const dialog = useRef<HTMLDialogElement>(null);
  const more = useRef<HTMLLIElement>(null);
  const [cards, setCards] = useState<readonly Card[]>([]);
  const [place, setPlace] = useState<Place>('shelf');
  const [asked, setAsked] = useState('');
  const [shown, setShown] = useState(batch);
  const [done, setDone] = useState<Done>({ says: '' });
  const [stated, setStated] = useState<Card | undefined>();
  const [shared, setShared] = useState<Job | undefined>();
  const files = useRef<HTMLInputElement>(null);

  const reload = useCallback(async () => {
    const { db } = keep;
    setCards(await clearBin(db, await cardsOf(db), Date.now()));
  }, [keep]);
  const attempt = useCallback(
    async (work: () => Promise<Done | undefined>) => {
      try {
        const what = await work();
        await reload();
        if (what) setDone(what);
      } catch (error) {
        setDone({ says: says.failed(error instanceof Error ? error.message : String(error)) });
      }
    },
    [reload],
  );

  useEffect(() => {
    dialog.current?.showModal();
    void attempt(async () => {
      await keep.flush();
      return undefined;
    });
  }, [attempt, keep]);

  const found = useMemo(
    () => cards.filter((card) => card.place === place && holds(card, asked.trim())),
    [cards, place, asked],
  );
  const isMore = found.length > shown;
  useEffect(() => {
    const last = more.current;
    if (!isMore || last === null || typeof IntersectionObserver === 'undefined') return;
    const observer = new IntersectionObserver((entries) => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) setShown((count) => count + batch);
    });
    observer.observe(last);
    return () => observer.disconnect();
  });

  const put = (card: Card, to: Place) =>
    attempt(async () => {
      await putIn(keep.db, card.id, to, Date.now());
      return {
        says: says.moved[to](card.name),
        undo: () => putIn(keep.db, card.id, card.place, card.binned ?? Date.now()),
      };
    });
  const close = () => dialog.current?.close();
  const acts: RowActs = {
    open: (card) =>
      void attempt(async () => {
        await openFrom(bench, keep, card.id);
        close();
        return undefined;
      }),
    rename: (card, name) => void attempt(async () => void (await rename(bench, keep, card.id, name)) as undefined),
    duplicate: (card) =>
      void attempt(async () => {
        await duplicate(keep, card);
        return { says: says.duplicated(card.name) };
      }),
    states: setStated,
    share: (card) =>
      void attempt(async () => {
        await keep.flush();
        setShared((await jobOf(keep.db, card.id))?.job);
        return undefined;
      }),
    put: (card, to) => void put(card, to),
    remove: (card) =>
      void attempt(async () => {
        await removeJobs(keep.db, [card.id]);
        return { says: says.removed(card.name) };
      }),
  };

  const saveAll = async (): Promise<Done> => {
    await keep.flush();
    const all = await cardsOf(keep.db);
    const bodies = await Promise.all(all.map(({ id }) => keep.db.get('bodies', id)));
    const jobs = all.map(({ place: at }, k) => ({ place: at, job: bodies[k]?.job }));
    const day = today(new Date());
    saveText(writeShelf(jobs, day), 'application/json', `sagitta-jobs-${day}.json`);
    return { says: says.savedAll(jobs.length) };
  };
  const intoFolder = async (): Promise<Done | undefined> => {
    const saved = await saveIntoFolder(keep);
    return saved && { says: says.savedInto(saved.count, saved.folder) };
  };

  return (
    <dialog className="shelf" ref={dialog} aria-labelledby="shelf-title" onClose={onClose}>
      <h2 id="shelf-title">{says.title}</h2>
      <div className="way">
        <label>
          <span>{says.search}</span>
          <input type="search" value={asked} onChange={({ target }) => setAsked(target.value)} />
        </label>
        <fieldset className="places">
          <legend>{says.where}</legend>
          {places.map((one) => (
            <label key={one}>
              <input type="radio" name="place" checked={place === one} onChange={() => setPlace(one)} />
              <span>{says.places(one, cards.filter((card) => card.place === one).length)}</span>
            </label>
          ))}
        </fieldset>
      </div>
      <p className="status" role="status">
        {done.says}{' '}
        {done.undo && (
          <button
            type="button"
            onClick={() =>
              attempt(async () => {
                await done.undo?.();
                return { says: says.undone };
              })
            }
          >
            {says.undo}
          </button>
        )}
      </p>
      {stated && (
        <States
          keep={keep}
          card={stated}
          onClose={() => setStated(undefined)}
          onBack={(state) =>
            attempt(async () => {
              await goBackTo(bench, keep, state);
              close();
              return undefined;
            })
          }
        />
      )}
      {place === 'bin' && <p>{says.binSays}</p>}
      <ul className="jobs">
        {found.slice(0, shown).map((card) => (
          <Row key={card.id} card={card} isHere={card.id === here} acts={acts} />
        ))}
        {found.length === 0 && <li>{cards.length === 0 ? says.empty : says.noneFound}</li>}
        {isMore && (
          <li ref={more}>
            <button type="button" onClick={() => setShown((count) => count + batch)}>
              {says.more(found.length - shown)}
            </button>
          </li>
        )}
      </ul>
      <p className="acts">
        <button type="button" onClick={() => files.current?.click()}>
          {says.openFiles}
        </button>
        <input
          ref={files}
          type="file"
          accept=".json,application/json"
          multiple
          hidden
          onChange={({ target }) => {
            const chosen = [...(target.files ?? [])];
            // So that the same file can be chosen again.
            target.value = '';
            void attempt(async () => {
              await openFiles(bench, keep, chosen);
              await keep.flush();
              return undefined;
            });
          }}
        />
        <button type="button" disabled={cards.length === 0} onClick={() => attempt(saveAll)}>
          {says.saveAll}
        </button>
        {hasFolders() && (
          <button type="button" disabled={cards.length === 0} onClick={() => attempt(intoFolder)}>
            {says.folder}
          </button>
        )}
      </p>
      <Room />
      {shared && <Share job={shared} onClose={() => setShared(undefined)} />}
      <p className="end">
        <button type="button" onClick={close}>
          {says.close}
        </button>
      </p>
    </dialog>
  );
};
