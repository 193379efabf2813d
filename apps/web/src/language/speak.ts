import { IntlMessageFormat } from 'intl-messageformat';
import type { Catalogue, Key, Values } from './catalogue.js';
import type { Language } from './language.js';

/** What may be put into a text that is only text. */
export type Plain = string | number;
/** What may be put into a text that becomes part of a page: parts of pages, and what a tag in it becomes. */
export type Rich<Node> = Plain | Node | ((inside: (string | Node)[]) => Node);

/** Says texts of one language: as text, or as the pieces that a page is put together from. */
export interface Speaker {
  readonly language: Language;
  readonly t: <K extends Key>(key: K, ...values: Values<K, Plain>) => string;
  readonly pieces: <Node extends object, K extends Key>(key: K, ...values: Values<K, Rich<Node>>) => (string | Node)[];
  /** A fixed word of the record in this language, such as "at dealer"; a word that is not known stays as it is. */
  readonly term: (word: string) => string;
  readonly knowsTerm: (word: string) => boolean;
  /** The name of a kind of defect; a kind that is not known is said by its code. */
  readonly kind: (code: string) => string;
}

/** Makes a speaker from the texts of a language. Texts are ICU messages; each is parsed once, when first said. */
export const speakerOf = (language: Language, catalogue: Catalogue): Speaker => {
  const parsed = new Map<Key, IntlMessageFormat>();
  const messageOf = (key: Key): IntlMessageFormat => {
    const known = parsed.get(key) ?? new IntlMessageFormat(catalogue[key] ?? key, language);
    parsed.set(key, known);
    return known;
  };
  const knowsTerm = (word: string): boolean => Object.hasOwn(catalogue, `term.${word}`);
  return {
    language,
    t: (key, ...[values]) => String(messageOf(key).format(values)),
    pieces: <Node extends object, K extends Key>(key: K, ...[values]: Values<K, Rich<Node>>) => {
      const made = messageOf(key).format<Node>(values as Record<string, Rich<Node>> | undefined);
      return Array.isArray(made) ? made : [made];
    },
    term: (word) => catalogue[`term.${word}` as Key] ?? word,
    knowsTerm,
    kind: (code) => catalogue[`kind.${code}` as Key] ?? code,
  };
};
