import type { ReactNode } from 'react';
import { PageWords, type LateTexts } from './page-words.js';

const TEXTS: LateTexts = {
  name: 'after sale',
  en: async () => (await import('../language/after-sale.en.js')).afterSaleEn,
  es: async () => (await import('../language/after-sale.es.js')).afterSaleEs,
};

/** Gives the pages of claims, warranty terms and cases their texts, which no other page has to carry. */
export const AfterSaleWords = ({ children }: { readonly children: ReactNode }) => (
  <PageWords texts={TEXTS}>{children}</PageWords>
);
