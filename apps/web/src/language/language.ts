/** The languages in which every text of this app exists, with their own names. */
export const LANGUAGES = { en: 'English', es: 'Español' } as const;

/** The code of a language, as in BCP 47. */
export type Language = keyof typeof LANGUAGES;

/** Whether a text is the code of a language this app speaks. */
export const isLanguage = (code: string): code is Language => Object.hasOwn(LANGUAGES, code);

/**
 * The first of the wished languages that this app speaks, whatever its region; English when there is none.
 *
 * @param wished BCP 47 tags, the dearest first, as a browser tells them
 */
export const firstSpoken = (wished: readonly string[]): Language => {
  const base = (tag: string): string => tag.toLowerCase().split('-')[0] ?? '';
  return wished.map(base).find(isLanguage) ?? 'en';
};
