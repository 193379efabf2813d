import type { OtherExposure } from '@hull-record/contracts';
import { useWords } from '../../words/use-words.js';
import { Forest } from './forest.js';

/** What else claimed hulls have in common: shown apart, never among the lots, and never people. */
export const Apart = ({ rows }: { readonly rows: readonly OtherExposure[] }) => {
  const { t } = useWords();
  return (
    <>
      <p>{t('cases.apartIs')}</p>
      <Forest rows={rows} tests={rows.length} caption={t('cases.apartList')} words={t('cases.apartAre')} />
    </>
  );
};
