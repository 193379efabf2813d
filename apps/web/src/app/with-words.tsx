import { useEffect, useMemo, useState, type ReactNode } from 'react';
import type { Catalogue } from '../language/catalogue.js';
import type { Language } from '../language/language.js';
import { loadCatalogue } from '../language/load-catalogue.js';
import { usePreferences } from '../preferences/use-preferences.js';
import { KitLanguage } from '../ui/kit-language.js';
import { wordsOf } from '../words/words.js';
import { WordsContext } from '../words/use-words.js';

interface WithWordsProps {
  /** The texts of the language that the device begins with. */
  readonly first: readonly [Language, Catalogue];
  readonly timeZone: string;
  readonly children: ReactNode;
}

/** Gives pages their words. Texts of another language are fetched when it is chosen; until then the page stays as it was. */
export const WithWords = ({ first, timeZone, children }: WithWordsProps) => {
  const [preferences] = usePreferences();
  const [[spoken, catalogue], setLoaded] = useState(first);
  const { language } = preferences;
  useEffect(() => {
    if (language === spoken) return;
    let wanted = true;
    loadCatalogue(language).then(
      (loaded) => wanted && setLoaded([language, loaded]),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [language, spoken]);
  useEffect(() => {
    document.documentElement.lang = spoken;
  }, [spoken]);
  const words = useMemo(
    () => wordsOf({ ...preferences, language: spoken }, catalogue, timeZone),
    [preferences, spoken, catalogue, timeZone],
  );
  return (
    <WordsContext value={words}>
      <KitLanguage language={spoken}>{children}</KitLanguage>
    </WordsContext>
  );
};
