import { createStore, type StoreApi } from 'zustand/vanilla';
import {
  alternativeAt,
  asPresent,
  freeLetters,
  type Letter,
  withAlternative,
  withoutAlternative,
} from '../../geometry/alternatives.ts';
import { applyChanges, type Change, isSame } from '../../geometry/changes.ts';
import { applies, fieldAt, getAt, setAt } from '../../geometry/fields.ts';
import { type Job, stringCount } from '../../geometry/job.ts';
import { type ReadJob, readJob } from '../../geometry/job-file.ts';
import type { Problem } from '../../geometry/problem.ts';
import { formatQuantity } from '../../geometry/units.ts';
import { begin, settle } from './begin.ts';
import { type Decimals, showAsRead } from './decimal.ts';
import { inShort } from './in-short.ts';
import { freshId } from './keep/fresh-id.ts';
import { isFull, type ListPath, type Values, withItem, withoutItem } from './numbers/lists.ts';
import { standsFor } from './numbers/stands-for.ts';
import { withChoice } from './numbers/with-choice.ts';
import { mostPasses, withoutPass, withPass, withReading } from './setup/passes.ts';
import type { Beginning, Entry, Notice, State } from './state.ts';
import { fieldTitle, type Side, withoutString, withString } from './strings.ts';
import { readField, stands } from './typing.ts';
import { words } from './words.ts';

export type { Beginning, Built, Draft, Notice, State, Step } from './state.ts';

/** A value and the field that it goes into. */
export interface PathValue {
  readonly path: string;
  readonly value: number | string;
}

const sameJob = (a: Job, b: Job | undefined): boolean => b !== undefined && isSame(a, b);

const without = <T>(record: Readonly<Record<string, T>>, key: string): Readonly<Record<string, T>> =>
  Object.fromEntries(Object.entries(record).filter(([other]) => other !== key));

/** What is left of the drafts once the item of a list that this path leads to is gone. */
const withoutDraftsOf = (drafts: State['drafts'], item: string): State['drafts'] =>
  Object.fromEntries(Object.entries(drafts).filter(([path]) => !path.startsWith(`${item}.`)));

/** The state of the bench and all that can be done to it. Knows nothing of React or of the DOM. */
export const createBench = (beginning: Beginning) => {
  const store: StoreApi<State> = createStore<State>(() => begin(beginning));
  const { getState: get, setState: set } = store;

  /** A change of the job, as one step from how all stood before. */
  const change = (
    job: Job,
    path: string,
    name: string,
    drafts = get().drafts,
    from: Omit<Entry, 'path'> = get(),
    settled?: ReturnType<typeof settle>,
  ) => {
    const { job: before, isFresh, solved, built, past, future } = from;
    if (sameJob(job, before)) return set({ job: before, isFresh, solved, built, past, future, drafts });
    const step = { name, path, id: get().id, isFresh, job: before, built };
    const made = settled ?? settle(job, built, get().decimals);
    set({ ...made, isFresh: false, past: [...past, step], future: [], drafts });
  };

  /** So many steps on, or back where it is negative, as far as there are any; what lies between is passed over. */
  const goBy = (count: number) => {
    const [from, to] = count < 0 ? (['past', 'future'] as const) : (['future', 'past'] as const);
    const state = get();
    const left = { past: [...state.past], future: [...state.future] };
    let now: Pick<State, 'id' | 'isFresh' | 'job' | 'built'> = state;
    for (let k = 0; k < Math.abs(count); k++) {
      const step = left[from].pop();
      if (step === undefined) break;
      const { id, isFresh, job, built } = now;
      left[to].push({ ...step, id, isFresh, job, built });
      now = step;
    }
    if (now === state) return;
    const { id, isFresh } = now;
    set({ ...settle(now.job, now.built, state.decimals), id, isFresh, ...left, drafts: {}, entry: undefined });
  };

  /** Another job in place of this one, which stays on the shelf. */
  const load = (job: Job, name: string, { id = freshId(), isFresh = true } = {}) => {
    const { id: before, isFresh: wasFresh, job: left, built, past } = get();
    if (id === before) return;
    const step = { name, path: '', id: before, isFresh: wasFresh, job: left, built };
    set({
      // Another job's drawing would be of another instrument: where this one cannot be built, nothing is drawn.
      ...settle(job, undefined, get().decimals),
      id,
      isFresh,
      past: [...past, step],
      future: [],
      entry: undefined,
      drafts: {},
      folds: {},
    });
  };

  const note = (notice: Notice) => set({ notices: [...get().notices.filter(({ id }) => id !== notice.id), notice] });

  /** A job that was read, in place of this one, which stays on the shelf; a starter goes there only with its first change. What keeps it from being read is said, and the job stays. */
  const bring = (read: ReadJob, name: string, { isStarter = false } = {}): ReadJob => {
    if (!read.ok) {
      const details = read.problems.map(({ path, says }) =>
        path === '' || says.includes(path) ? says : `${path}: ${says}`,
      );
      note({ id: 'open', says: words.notices.notOpened(name), details });
      return read;
    }
    load(read.job, words.opened(name), { isFresh: isStarter });
    set({ notices: get().notices.filter(({ id }) => id !== 'open') });
    if (read.unknown.length > 0)
      note({ id: 'open', says: words.notices.unknown(name), details: read.unknown, fine: true });
    return read;
  };

  return {
    ...store,

    /** Takes what stands in a field after each key: a good value changes the job at once, a bad one puts back what stood there before. */
    type(path: string, text: string) {
      const { drafts, entry: begun, job, isFresh, solved, built, past, future } = get();
      const field = fieldAt(path);
      if (field === undefined) return;
      const entry = begun?.path === path ? begun : { path, job, isFresh, solved, built, past, future };
      const read = readField(field, text, showAsRead(get()));
      const draft = read.ok ? { text } : { text, says: read.says };
      const typed = read.ok ? setAt(withReading(entry.job, path), path, read.value) : entry.job;
      set({ entry });
      change(typed, path, fieldTitle(job, path), { ...drafts, [path]: draft }, entry);
    },

    /** A number is taken hold of on the drawing: all that is made of it until it is let go is one step from here. */
    hold(path: string) {
      const { entry, job, isFresh, solved, built, past, future } = get();
      set({ held: path, entry: entry?.path === path ? entry : { path, job, isFresh, solved, built, past, future } });
    },

    /**
     * Values dragged on the drawing, or gone to by its keys; those of one grip belong together and go by its path. From what can be built none goes to what cannot: it stays, and what is in the
     * way is given back. From what cannot be built it goes anywhere.
     */
    drag(path: string, values: readonly PathValue[], name: string): Problem | undefined {
      const { drafts, entry: begun, job, isFresh, solved, built, past, future, decimals } = get();
      const entry = begun?.path === path ? begun : { path, job, isFresh, solved, built, past, future };
      const dragged = values.reduce((so, { path: at, value }) => setAt(so, at, value), entry.job);
      const left = values.reduce((so, { path: at }) => (Object.hasOwn(so, at) ? without(so, at) : so), drafts);
      const made = settle(dragged, built, decimals);
      if (solved.ok && !made.solved.ok) return made.solved.problems[0];
      set({ entry });
      change(dragged, path, name, left, entry, made);
      return undefined;
    },

    /** What kept the number from being dragged or stepped on; nothing did, where it is left out. */
    bar(path: string, problem: Problem | undefined) {
      const { job, barred } = get();
      if (problem !== undefined || barred !== undefined) set({ barred: problem && { path, job, problem } });
    },

    letGo() {
      set({ held: undefined, entry: undefined });
    },

    /** A number on the drawing is pointed at, or none any more. */
    point(path: string | undefined) {
      if (get().pointed !== path) set({ pointed: path });
    },

    /** A choice or a value put in without typing. */
    put(path: string, value: number | string) {
      const { job, drafts } = get();
      const isUnit = fieldAt(path)?.kind === 'word' && path.startsWith('show.');
      // In another unit what was typed would mean something else.
      const left = isUnit ? {} : without(drafts, path);
      set({ entry: undefined });
      change(withChoice(job, path, value), path, fieldTitle(job, path), left);
    },

    /** Several values at once, as one step. */
    putAll(changes: readonly PathValue[], name: string) {
      const { job, drafts } = get();
      const changed = changes.reduce((so, { path, value }) => setAt(so, path, value), job);
      const left = Object.fromEntries(Object.entries(drafts).filter(([path]) => !changes.some((c) => c.path === path)));
      set({ entry: undefined });
      change(changed, changes[0]?.path ?? '', name, left);
    },

    /** Takes out what may be left out. */
    clear(path: string, name: string) {
      const { job, drafts } = get();
      const left = Object.fromEntries(Object.entries(drafts).filter(([other]) => !other.startsWith(path)));
      set({ entry: undefined });
      change(setAt(job, path, undefined), path, name, left);
    },

    enter(path: string) {
      set({ focus: path, lastFocus: path });
    },

    /** No field is worked at any more. */
    rest() {
      set({ lastFocus: undefined });
    },

    /** The field is left: a good value is shown as it is stored, a bad text stays with what is said of it. */
    leave(path: string) {
      const { drafts } = get();
      const good = drafts[path]?.says === undefined;
      set({ focus: undefined, entry: undefined, drafts: good ? without(drafts, path) : drafts });
    },

    /** Back to the value that stood here before anything was typed, and to the steps as they were. */
    forget(path: string) {
      const { entry, drafts } = get();
      const left = without(drafts, path);
      if (entry?.path !== path) return set({ drafts: left, held: undefined });
      change(entry.job, path, '', left, entry);
      set({ entry: undefined, held: undefined });
    },

    /** One more string on one side, and its key. */
    addString(side: Side): string | undefined {
      const { job } = get();
      if (job.strings.list.length >= stringCount.max) return undefined;
      const { job: longer, id } = withString(job, side);
      set({ entry: undefined });
      change(longer, `strings.list.${side}`, words.strings.addStep);
      return id;
    },

    removeString(id: string) {
      const { job, drafts } = get();
      const string = job.strings.list.find((one) => one.id === id);
      if (string === undefined || job.strings.list.length <= stringCount.min) return;
      const item = `strings.list.${id}`;
      // Nor is there a place left for what was being typed of it in a reading.
      const readings = job.setup.log.map((pass) => `setup.log.${pass.id}.readings.${id}`);
      const left = [item, ...readings].reduce(withoutDraftsOf, drafts);
      set({ entry: undefined });
      change(withoutString(job, id), item, words.strings.removeStep(string.name), left);
    },

    /** One more item of a list, such as a measured fret. */
    addItem(list: ListPath, values: Values, name: string) {
      const { job } = get();
      if (isFull(job, list)) return;
      set({ entry: undefined });
      change(withItem(job, list, values), list, name);
    },

    removeItem(list: ListPath, id: string, name: string) {
      const { job, drafts } = get();
      const item = `${list}.${id}`;
      set({ entry: undefined });
      change(withoutItem(job, list, id), item, name, withoutDraftsOf(drafts, item));
    },

    /** A job made from this one, as one step; what was being typed where it has another value goes. */
    become(made: Job, path: string, name: string) {
      const { job, drafts } = get();
      const left = Object.entries(drafts).filter(([at]) => getAt(made, at) === getAt(job, at));
      set({ entry: undefined });
      change(made, path, name, Object.fromEntries(left));
    },

    /** One more reading of the strung guitar, and its key; those before it are folded away. */
    addPass(): string | undefined {
      const { job, folds } = get();
      if (job.setup.log.length >= mostPasses) return undefined;
      const { job: longer, id } = withPass(job);
      const kept = Object.fromEntries(Object.entries(folds).filter(([key]) => !key.startsWith('setup.log.')));
      set({ entry: undefined, folds: kept });
      change(longer, `setup.log.${id}`, words.setUp.addStep);
      return id;
    },

    removePass(id: string) {
      const { job, drafts, folds } = get();
      const place = job.setup.log.findIndex((pass) => pass.id === id);
      if (place < 0) return;
      const item = `setup.log.${id}`;
      set({ entry: undefined, folds: without(folds, item) });
      change(withoutPass(job, id), item, words.setUp.removeStep(place + 1), withoutDraftsOf(drafts, item));
    },

    /** The present design as one more alternative, and its letter. */
    addAlternative(): Letter | undefined {
      const { job } = get();
      const [letter] = freeLetters(job);
      if (letter === undefined) return undefined;
      set({ entry: undefined });
      change(withAlternative(job, ''), `alternatives.list.${letter}`, words.compare.addStep(letter));
      return letter;
    },

    removeAlternative(letter: string) {
      const { job, drafts, folds } = get();
      if (alternativeAt(job, letter) === undefined) return;
      const item = `alternatives.list.${letter}`;
      set({ entry: undefined, folds: without(folds, `over.${letter}`) });
      change(withoutAlternative(job, letter), item, words.compare.removeStep(letter), withoutDraftsOf(drafts, item));
    },

    /** An alternative as the present design, which stands in its place from then on; what was being typed where it has another value goes. */
    makePresent(letter: string) {
      const { job, drafts } = get();
      if (alternativeAt(job, letter) === undefined) return;
      const made = asPresent(job, letter);
      const left = Object.entries(drafts).filter(([at]) => getAt(made, at) === getAt(job, at));
      set({ entry: undefined });
      change(made, `alternatives.list.${letter}`, words.compare.presentStep(letter), Object.fromEntries(left));
    },

    /** Radius against radius: the present design with each of these top radii (mm), as many as letters are free. */
    addRadii(radii: readonly (number | 'flat')[]) {
      const { job } = get();
      const room = radii.slice(0, freeLetters(job).length);
      const named = (radius: number | 'flat') =>
        words.compare.topRadius(formatQuantity(radius, 'radius', showAsRead(get()), { unit: true }));
      set({ entry: undefined });
      change(
        room.reduce((so, radius) => withAlternative(so, named(radius), setAt(job, 'bridge.topRadius', radius)), job),
        'alternatives.list',
        words.compare.radiiStep,
      );
    },

    /** Numbers are read with another decimal mark from now on: nothing of the job changes, and what is typed stays. */
    read(decimals: Decimals) {
      const { job, built, drafts } = get();
      const { chosen, mark } = get().decimals;
      if (chosen === decimals.chosen && mark === decimals.mark) return;
      const again = Object.entries(drafts).map(([path, draft]) => {
        const field = draft.says === undefined ? undefined : fieldAt(path);
        const read = field && readField(field, draft.text, showAsRead({ job, decimals }));
        return [path, read?.ok === false ? { ...draft, says: read.says } : draft] as const;
      });
      set({ decimals, ...settle(job, built, decimals), drafts: Object.fromEntries(again), entry: undefined });
    },

    /** Opens or closes the drawer with the numbers. */
    openDrawer(isOpen: boolean) {
      set({ isDrawerOpen: isOpen });
    },

    /** Opens or closes a part of the page that can be folded. */
    fold(id: string, isOpen: boolean) {
      set({ folds: { ...get().folds, [id]: isOpen } });
    },

    undo: () => goBy(-1),
    redo: () => goBy(1),
    goBy,

    /** A fresh job in place of this one, and what in it was not measured. */
    startNew(job: Job, assumed: readonly string[] = []) {
      load(job, words.newJob.step);
      set({ notices: get().notices.filter(({ id }) => id !== 'open' && id !== 'new') });
      if (assumed.length > 0) note({ id: 'new', says: words.newJob.assumed, details: assumed, fine: true });
    },

    /** A job's text in place of this job, as `bring` does. */
    open: (text: string, name: string, options: { readonly isStarter?: boolean } = {}): ReadJob =>
      bring(readJob(text), name, options),
    bring,

    /** A job of the shelf in place of this one. */
    openKept: (job: Job, id: string) => load(job, words.opened(job.name), { id, isFresh: false }),

    /**
     * The job as it has become with what another window did to it (`foreign`), this window's own later changes kept. It is a step of its own, before what is being typed, so that what
     * another hand has overwritten can be had back.
     */
    merge(next: Job, foreign: readonly Change[], name: string) {
      const { entry: begun, job, isFresh, built, past, id, drafts } = get();
      // A number that another hand has put in since is shown as it is now; what cannot be used, and what was typed after it, stays as it stands.
      const overwritten = foreign
        .map(({ path }) => path.join('.'))
        .filter((at) => !isSame(getAt(next, at), getAt(job, at)));
      const left = Object.entries(drafts).filter(([at, { says }]) => says !== undefined || !overwritten.includes(at));
      const entry = begun !== undefined && overwritten.includes(begun.path) ? undefined : begun;
      const base = entry ?? { job, isFresh, built, past };
      const step = {
        name,
        path: foreign[0]?.path.join('.') ?? '',
        id,
        isFresh: base.isFresh,
        job: base.job,
        built: base.built,
      };
      const rebased = settle(applyChanges(base.job, foreign), base.built, get().decimals);
      const own = entry === undefined ? [] : past.slice(entry.past.length);
      const typed = own.map((one) => ({ ...one, job: rebased.job, built: rebased.built }));
      const before = [...base.past, step];
      set({
        ...settle(next, built, get().decimals),
        isFresh: false,
        past: [...before, ...typed],
        future: [],
        drafts: Object.fromEntries(left),
        entry: undefined,
        ...(entry && { entry: { ...entry, ...rebased, isFresh: false, past: before, future: [] } }),
      });
    },

    /** The job is written to a file: texts that cannot be used do not go with it, which is said. */
    markSaved() {
      const details = refusedFields(get());
      set({ notices: get().notices.filter(({ id }) => id !== 'save') });
      if (details.length > 0) note({ id: 'save', says: words.notices.savedWithout, details });
    },

    note,
    dismiss(id: string) {
      set({ notices: get().notices.filter((notice) => notice.id !== id) });
    },
  };
};

export type Bench = ReturnType<typeof createBench>;

/** What keeps a number of this job from going on, in the first of its sentences; undefined where nothing did. */
export const barOf = ({ barred, job }: Pick<State, 'barred' | 'job'>, path: string | undefined): string | undefined =>
  barred !== undefined && barred.job === job && barred.path === path ? inShort(barred.problem) : undefined;

/** The fields that hold a text which cannot be used, each by its name and with the value that stands in the job instead. */
export const refusedFields = ({
  drafts,
  job,
  decimals,
}: Pick<State, 'drafts' | 'job' | 'decimals'>): readonly string[] =>
  Object.entries(drafts).flatMap(([path, { says }]) => {
    const field = fieldAt(path);
    if (says === undefined || field === undefined || !applies(field, job)) return [];
    const value = getAt(job, path);
    return [
      words.refused(
        fieldTitle(job, path),
        stands(field, value, showAsRead({ job, decimals })),
        typeof value === 'string',
      ),
    ];
  });

/** The number that a word such as “flat” stands in for now: the last one in the job's past, else what the word stands for, or what is preset or usual. */
export const numberBefore = ({ job: now, past }: Pick<State, 'job' | 'past'>, path: string): number => {
  const earlier = past.map(({ job }) => getAt(job, path)).findLast((value) => typeof value === 'number');
  const field = fieldAt(path);
  return [earlier, standsFor(now, path), field?.preset, field?.usual?.[0], field?.min].find(
    (value) => typeof value === 'number',
  ) as number;
};
