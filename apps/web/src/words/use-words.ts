import { createContext, useContext } from 'react';
import type { Words } from './words.js';

/** Where a page finds its words. */
export const WordsContext = createContext<Words | null>(null);

/** The words of this page: texts, figures and times as the person at this device chose them. */
export const useWords = (): Words => {
  const words = useContext(WordsContext);
  if (words === null) throw new Error('Words are used outside of their provider.');
  return words;
};
