import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { Entry, Photo, Sent } from '../outbox/entry.js';

/** An answer of the service that is kept for when there is no network, with the service's time of it. */
export interface KeptAnswer {
  readonly name: string;
  readonly answer: unknown;
  readonly at: string;
}

interface Stores extends DBSchema {
  /** What this device wrote, in the order of writing; each until the service has it. */
  entries: { key: number; value: Entry; indexes: { id: string } };
  /** The photo of an entry, by the id of the entry: kept and removed in one transaction with it. */
  photos: { key: string; value: Photo };
  /** What the service answered to entries, by their id: what a later entry is about is found by it. */
  sent: { key: string; value: Sent; indexes: { at: string } };
  answers: { key: string; value: KeptAnswer };
}

export type DeviceDatabase = IDBPDatabase<Stores>;

let opened: Promise<DeviceDatabase> | undefined;

/** Opens what this device keeps (IndexedDB). A browser that keeps nothing for pages refuses, and so does this. */
export const deviceDatabase = (): Promise<DeviceDatabase> => {
  opened ??= openDB<Stores>('hull-record', 1, {
    upgrade: (db) => {
      db.createObjectStore('entries', { keyPath: 'order', autoIncrement: true }).createIndex('id', 'id', {
        unique: true,
      });
      db.createObjectStore('photos');
      db.createObjectStore('sent', { keyPath: 'id' }).createIndex('at', 'at');
      db.createObjectStore('answers', { keyPath: 'name' });
    },
    terminated: () => {
      opened = undefined;
    },
  });
  opened.catch(() => {
    opened = undefined;
  });
  return opened;
};

/** Written to disk before it counts as kept: a tablet whose battery is pulled out has it. */
export const TO_DISK = { durability: 'strict' } as const;
