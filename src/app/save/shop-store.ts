import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { fieldAt, getAt, setAt } from '../../../geometry/fields.ts';
import type { ShowUnits } from '../../../geometry/units.ts';
import { newShop, readShop, type Shop, shopSchema, validateShop } from '../../../templates/shop/index.ts';
import { freeKey } from '../free-key.ts';
import { reasonOf } from '../keep/begin.ts';
import type { Database } from '../keep/database.ts';
import { recall, remember } from '../keep/shelf.ts';
import type { Draft } from '../state.ts';
import { readField } from '../typing.ts';
import { words } from '../words.ts';
import { firstPaper } from './first-paper.ts';

/** Under which name the device remembers the shop's settings. */
export const shopKey = 'shop';

/** What is typed of a print to be proved, till it is proved. */
export interface ProofTyped {
  /** How the page lies that is measured; undefined till it is chosen or a reading typed, and again when pages are turned with none typed: as the page on show. */
  readonly lies?: 'upright' | 'lying' | undefined;
  readonly isCorrected: boolean;
  /** What stands in each bar's field, by the direction and the bar's length. */
  readonly texts: Readonly<Record<string, string>>;
}

export interface ShopState {
  readonly shop: Shop;
  /** What stands in fields while it differs from the stored values. */
  readonly drafts: Readonly<Record<string, Draft>>;
  /** What stood at the field that is typed at before anything was typed there: what is refused puts it back. */
  readonly entry?: { readonly path: string; readonly value: unknown };
  readonly proof: ProofTyped;
  /** Whether the settings are kept on this device; why not, where that failed. */
  readonly isKept: boolean;
  readonly trouble?: string;
  /** What lies on the device and cannot be read, till a change takes its place. */
  readonly unread?: { readonly says: string; readonly text: string };
  /** What stood here before settings were opened from a file. */
  readonly earlier?: Shop;
}

export const noProof: ProofTyped = { isCorrected: true, texts: {} };

const without = <T>(record: Readonly<Record<string, T>>, begin: string): Readonly<Record<string, T>> =>
  Object.fromEntries(Object.entries(record).filter(([key]) => key !== begin && !key.startsWith(`${begin}.`)));

/** The shop's settings as long as the page lives, and kept in `db` where there is one; a new shop's paper goes by the browser's `languages`. */
export const createShopStore = (db: Database | undefined, languages: readonly string[] = []) => {
  const store = createStore<ShopState>(() => ({
    shop: setAt(newShop(), 'paper.size', firstPaper(languages)),
    drafts: {},
    proof: noProof,
    isKept: db !== undefined,
  }));
  const { getState: get, setState: set } = store;
  // One after another, so that the last change is the one that stays.
  let kept = Promise.resolve();
  const trouble = (error: unknown) => set({ isKept: false, trouble: words.shop.trouble(reasonOf(error)) });

  const change = (shop: Shop, more: Partial<ShopState> = {}) => {
    const { unread: _, ...rest } = get();
    set({ ...rest, ...more, shop }, true);
    if (db) kept = kept.then(() => remember(db, shopKey, shop)).catch(trouble);
  };

  return {
    ...store,
    change,

    /** Takes up what the device keeps, as another window may have left it; what cannot be read is said. Never rejects. */
    async load(): Promise<void> {
      if (db === undefined) return;
      try {
        await kept;
        const value = await recall(db, shopKey);
        if (value === undefined) return;
        const read = validateShop(value);
        if (read.ok) set({ shop: read.shop });
        else
          set({
            unread: {
              says: words.shop.unread(read.problems.map(({ says }) => says)),
              text: `${JSON.stringify(value, null, 2)}\n`,
            },
          });
      } catch (error) {
        trouble(error);
      }
    },

    /** A text typed into a field: a good one is stored at once; a bad one stays with what is said of it, and what stood there before it was typed at stands again. */
    type(path: string, text: string, show: ShowUnits): void {
      const field = fieldAt(path, shopSchema);
      if (field === undefined) return;
      const { shop, drafts, entry: begun } = get();
      const entry = begun?.path === path ? begun : { path, value: getAt(shop, path) };
      const read = readField(field, text, show, shopSchema);
      const draft: Draft = read.ok ? { text } : { text, says: read.says };
      const value = read.ok ? read.value : entry.value;
      const more = { entry, drafts: { ...drafts, [path]: draft } };
      if (value === getAt(shop, path)) set(more);
      else change(setAt(shop, path, value), more);
    },

    /** The field is left: a good value is shown as it is stored. */
    leave(path: string): void {
      const { entry: _, ...rest } = get();
      const drafts = rest.drafts[path]?.says === undefined ? without(rest.drafts, path) : rest.drafts;
      set({ ...rest, drafts }, true);
    },

    /** Back to what stood there before anything was typed. */
    forget(path: string): void {
      const { entry, shop } = get();
      const drafts = without(get().drafts, path);
      if (entry?.path !== path || entry.value === getAt(shop, path)) set({ drafts });
      else change(setAt(shop, path, entry.value), { drafts });
    },

    put(path: string, value: number | string): void {
      change(setAt(get().shop, path, value), { drafts: without(get().drafts, path) });
    },

    addItem(list: string, kind: string, values: Readonly<Record<string, unknown>>): string {
      const items = getAt(get().shop, list) as readonly { readonly id: string }[];
      const id = freeKey(items, kind);
      change(setAt(get().shop, list, [...items, { ...values, id }]));
      return id;
    },

    removeItem(list: string, id: string): void {
      const items = getAt(get().shop, list) as readonly { readonly id: string }[];
      change(
        setAt(
          get().shop,
          list,
          items.filter((item) => item.id !== id),
        ),
        { drafts: without(get().drafts, `${list}.${id}`) },
      );
    },

    /** So many copies of each piece by its id; one that is not named comes in its usual number. */
    putCopies(copies: Shop['copies']): void {
      change({ ...get().shop, copies });
    },

    typeProof(typed: Partial<ProofTyped>): void {
      set({ proof: { ...get().proof, ...typed } });
    },

    /** Settings from a file's text in place of these, and what is to be said of it. */
    open(text: string, name: string): string {
      const read = readShop(text);
      if (!read.ok)
        return words.shop.notOpened(
          name,
          read.problems.map(({ says }) => says),
        );
      change(read.shop, { drafts: {}, earlier: get().shop });
      return read.unknown.length === 0 ? words.shop.opened(name) : words.shop.openedKeeping(name, read.unknown);
    },

    /** What stood here before settings were opened. */
    back(): void {
      const { earlier, ...rest } = get();
      if (earlier === undefined) return;
      set({ ...rest, drafts: {} }, true);
      change(earlier);
    },
  };
};

export type ShopStore = ReturnType<typeof createShopStore>;

export const ShopContext = createContext<ShopStore | undefined>(undefined);

/** The settings of the shop around this component. */
export const useShopStore = (): ShopStore => {
  const store = useContext(ShopContext);
  if (store === undefined) throw new Error('No shop stands around this component.');
  return store;
};

export const useShopState = <T>(select: (state: ShopState) => T): T => useStore(useShopStore(), select);
