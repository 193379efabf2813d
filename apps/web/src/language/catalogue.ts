import type { en } from './en.js';
import type { ValuesOf } from './message.js';
import type { wholeEn } from './whole.en.js';

type English = typeof wholeEn;
/** The name of a text. */
export type Key = keyof English;
/** The texts in one language: those that are fetched first, and those that have come with a page. */
export type Catalogue = Readonly<Record<keyof typeof en, string> & Partial<Record<Key, string>>>;
/** What the text of this name has to be given, each value of type Value. */
export type Values<K extends Key, Value> = ValuesOf<English[K], Value>;
