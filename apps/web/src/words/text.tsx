import { Fragment, createElement, type ReactElement, type ReactNode } from 'react';
import type { Key, Values } from '../language/catalogue.js';
import type { Rich } from '../language/speak.js';
import { useWords } from './use-words.js';

type Given<K extends Key> = Values<K, Rich<ReactElement>>;
type TextProps<K extends Key> = { readonly of: K } & (Given<K> extends [infer V] ? { readonly with: V } : object);

/** A text of the catalogue with parts of a page in it: elements for its names, functions for its tags. */
export const Text = <K extends Key>(props: TextProps<K>): ReactNode => {
  const { pieces } = useWords();
  const given = ('with' in props ? [props.with] : []) as unknown as Given<K>;
  return createElement(Fragment, null, ...pieces<ReactElement, K>(props.of, ...given));
};

/** A fixed word of the record in the person's language; a word that is not known is marked as the English it is. */
export const Term = ({ word }: { readonly word: string }): ReactNode => {
  const { term, knowsTerm } = useWords();
  return knowsTerm(word) ? term(word) : <Said text={word} />;
};

/** A sentence of the service or of people, which is not translated. The service speaks English. */
export const Said = ({ text }: { readonly text: string }): ReactNode => {
  const { language } = useWords();
  return language === 'en' ? text : <span lang="en">{text}</span>;
};
