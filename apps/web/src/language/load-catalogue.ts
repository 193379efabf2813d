import type { Catalogue } from './catalogue.js';
import type { Language } from './language.js';

const LOADERS: Readonly<Record<Language, () => Promise<Catalogue>>> = {
  en: async () => (await import('./en.js')).en,
  es: async () => (await import('./es.js')).es,
};

/** Fetches the texts of one language; the others stay with the service. */
export const loadCatalogue = (language: Language): Promise<Catalogue> => LOADERS[language]();
