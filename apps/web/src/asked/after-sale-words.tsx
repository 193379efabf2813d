import { useQuery } from '@tanstack/react-query';
import { useMemo, type ReactNode } from 'react';
import type { Catalogue } from '../language/catalogue.js';
import type { Language } from '../language/language.js';
import { useWords, WordsContext } from '../words/use-words.js';
import { Answer } from './answer.js';

const LOADERS: Readonly<Record<Language, () => Promise<Partial<Catalogue>>>> = {
  en: async () => (await import('../language/after-sale.en.js')).afterSaleEn,
  es: async () => (await import('../language/after-sale.es.js')).afterSaleEs,
};

interface AfterSaleWordsProps {
  readonly children: ReactNode;
}

/** Gives the pages of claims, warranty terms and cases their texts, which no other page has to carry. */
export const AfterSaleWords = ({ children }: AfterSaleWordsProps) => {
  const { t, language } = useWords();
  const query = useQuery({
    queryKey: ['texts after sale', language],
    queryFn: LOADERS[language],
    staleTime: Infinity,
    networkMode: 'always',
  });
  return (
    <Answer what={t('app.page')} query={query}>
      {(more) => <With more={more}>{children}</With>}
    </Answer>
  );
};

const With = ({ more, children }: AfterSaleWordsProps & { readonly more: Partial<Catalogue> }) => {
  const words = useWords();
  return <WordsContext value={useMemo(() => words.and(more), [words, more])}>{children}</WordsContext>;
};
