import { useQuery } from '@tanstack/react-query';
import { useMemo, type ReactNode } from 'react';
import type { Catalogue } from '../language/catalogue.js';
import type { Language } from '../language/language.js';
import { useWords, WordsContext } from '../words/use-words.js';
import { Answer } from './answer.js';

/** The texts that some pages alone say, by language, under the name that they are kept by once they were fetched. */
export interface LateTexts extends Readonly<Record<Language, () => Promise<Partial<Catalogue>>>> {
  readonly name: string;
}

interface PageWordsProps {
  readonly texts: LateTexts;
  readonly children: ReactNode;
}

/** Gives pages the texts that no other page has to carry. */
export const PageWords = ({ texts, children }: PageWordsProps) => {
  const { t, language } = useWords();
  const query = useQuery({
    queryKey: ['texts', texts.name, language],
    queryFn: texts[language],
    staleTime: Infinity,
    networkMode: 'always',
  });
  return (
    <Answer what={t('app.page')} query={query}>
      {(more) => <With more={more}>{children}</With>}
    </Answer>
  );
};

const With = ({ more, children }: { readonly more: Partial<Catalogue>; readonly children: ReactNode }) => {
  const words = useWords();
  return <WordsContext value={useMemo(() => words.and(more), [words, more])}>{children}</WordsContext>;
};
