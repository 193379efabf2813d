import type { ReactNode } from 'react';
import { PageWords, type LateTexts } from '../asked/page-words.js';

const TEXTS: LateTexts = {
  name: 'charts',
  en: async () => (await import('./words.en.js')).chartsEn,
  es: async () => (await import('./words.es.js')).chartsEs,
};

/** Gives the charts their texts, which no other page has to carry. */
export const ChartsWords = ({ children }: { readonly children: ReactNode }) => (
  <PageWords texts={TEXTS}>{children}</PageWords>
);
