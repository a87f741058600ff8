import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/*
 * Where jobs are kept on this device: an IndexedDB. A job's card is small and read by the hundred, its body only when it is opened. The order of the database's own transactions decides which
 * of two windows' changes is the later one, whatever any clock says.
 */

export const databaseName = 'sagitta';
const databaseVersion = 1;

/** Where a job lies: on the shelf, put away, or in the bin from which it goes for good after a while. */
export type Place = 'shelf' | 'archive' | 'bin';

/** What the shelf shows of a job. */
export interface Card {
  readonly id: string;
  readonly name: string;
  /** The day that stands on the templates, as year-month-day. */
  readonly date: string;
  /** When it was last changed, ms since 1970 by the device's clock: only for people. */
  readonly changed: number;
  readonly place: Place;
  /** How many things keep its bridge from being made as its numbers stand. */
  readonly problems: number;
  /** When it was put into the bin, ms since 1970. */
  readonly binned?: number;
  /** Its small drawing: the outline and slot from above as SVG path data, mm, and what they measure. */
  readonly picture?: { readonly d: string; readonly box: string };
}

/** A job's file as a plain value, after so many changes. */
export interface Body {
  readonly id: string;
  readonly seq: number;
  readonly job: unknown;
}

/** A job as it stood after its `seq`th change, to go back to. */
export interface KeptState {
  readonly id: string;
  readonly seq: number;
  /** What that change was called. */
  readonly name: string;
  /** ms since 1970 by the device's clock: only for people. */
  readonly at: number;
  readonly job: unknown;
}

export interface Schema extends DBSchema {
  cards: { key: string; value: Card };
  bodies: { key: string; value: Body };
  states: { key: [string, number]; value: KeptState };
  /** What belongs to the device and not to a job, by its name. */
  device: { key: string; value: unknown };
}

export type Database = IDBPDatabase<Schema>;

export interface DatabaseTold {
  /** A newer window needs this one to let go, which it has done: nothing more is kept here. */
  readonly onTaken?: () => void;
  /** The browser closed the database, as when its files were cleared. */
  readonly onLost?: () => void;
}

/**
 * Opens the database, made if need be. Rejects where the browser has none, or denies it; and with a TimeoutError where an older window holds it and does not let it be brought up to this version.
 */
export const openDatabase = async (
  told: DatabaseTold = {},
  name = databaseName,
  version = databaseVersion,
): Promise<Database> => {
  let isHeld: (error: DOMException) => void = () => {};
  const held = new Promise<never>((_, reject) => {
    isHeld = reject;
  });
  const opening: Promise<Database> = openDB<Schema>(name, version, {
    upgrade(made, from) {
      if (from < 1) {
        made.createObjectStore('cards', { keyPath: 'id' });
        made.createObjectStore('bodies', { keyPath: 'id' });
        made.createObjectStore('states', { keyPath: ['id', 'seq'] });
        made.createObjectStore('device');
      }
    },
    blocked: () => isHeld(new DOMException('An older window holds the database.', 'TimeoutError')),
    blocking: (_from, _to, { target }) => {
      (target as IDBDatabase).close();
      told.onTaken?.();
    },
    terminated: () => told.onLost?.(),
  });
  // One that opens after all is not needed any more.
  return Promise.race([
    opening,
    held.catch((error) => {
      opening.then(
        (db) => db.close(),
        () => {},
      );
      throw error;
    }),
  ]);
};
