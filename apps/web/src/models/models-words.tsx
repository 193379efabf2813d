import type { ReactNode } from 'react';
import { PageWords, type LateTexts } from '../asked/page-words.js';

const TEXTS: LateTexts = {
  name: 'models',
  en: async () => {
    const [models, schedule] = await Promise.all([import('./words.en.js'), import('./schedule/words.en.js')]);
    return { ...models.modelsEn, ...schedule.scheduleEn };
  },
  es: async () => {
    const [models, schedule] = await Promise.all([import('./words.es.js'), import('./schedule/words.es.js')]);
    return { ...models.modelsEs, ...schedule.scheduleEs };
  },
};

/** Gives the pages of models and schedules their texts, which no other page has to carry. */
export const ModelsWords = ({ children }: { readonly children: ReactNode }) => (
  <PageWords texts={TEXTS}>{children}</PageWords>
);
