import type { CaseAnswer } from '@hull-record/contracts';
import { BoundedTable } from '../../record/bounded-table.js';
import { Fold } from '../../ui/fold.js';
import { useWords } from '../../words/use-words.js';
import { chance } from './figures.js';

/** Classes that cannot be judged, whatever came back: named, so that nobody takes silence for innocence. */
export const Untestable = ({ of: { count, classes } }: { readonly of: CaseAnswer['untestable'] }) => {
  const words = useWords();
  const { t } = words;
  if (count === 0) return <p>{t('cases.allTestable')}</p>;
  return (
    <>
      <p>{t('cases.untestable', { count })}</p>
      <Fold summary={t('cases.untestableList')}>
        <BoundedTable
          what={t('cases.rows')}
          caption={t('cases.untestableList')}
          columns={[
            { head: t('cases.named'), cell: ({ named }) => named, names: true, class: 'n' },
            { head: t('cases.hullsExposed'), cell: ({ hulls }) => hulls, class: 'r n' },
            { head: t('cases.observed'), cell: ({ observed }) => observed, class: 'r n' },
            { head: t('cases.smallestP'), cell: ({ smallestP }) => chance(smallestP, words), class: 'r n' },
          ]}
          rows={classes}
        />
      </Fold>
    </>
  );
};
