import type { en } from './en.js';
import type { ValuesOf } from './message.js';

type English = typeof en;
/** The name of a text. */
export type Key = keyof English;
/** Every text of this app in one language. */
export type Catalogue = Readonly<Record<Key, string>>;
/** What the text of this name has to be given, each value of type Value. */
export type Values<K extends Key, Value> = ValuesOf<English[K], Value>;
