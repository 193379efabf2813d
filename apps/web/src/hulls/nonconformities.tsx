import type { PartView } from '@hull-record/contracts';
import { mark } from '../marks/mark.js';
import { Table } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** Where the making of a part broke a rule, with what was decided. */
export const Nonconformities = ({ part: { nonconformities, number } }: { readonly part: PartView }) => {
  const { t } = useWords();
  if (nonconformities.length === 0) return null;
  return (
    <>
      <h3>{t('hulls.nonconformities')}</h3>
      <Table
        caption={t('hulls.nonconformitiesOf', { part: number })}
        columns={[
          { head: t('record.what'), cell: ({ detail }) => <Said text={detail} />, names: true },
          { head: t('record.when'), cell: ({ happenedAt }) => <Moment at={happenedAt} /> },
          {
            head: t('hulls.decision'),
            cell: ({ disposition }) =>
              disposition === null ? mark('outside', t('hulls.open')) : mark('made', <Term word={disposition} />),
          },
        ]}
        rows={nonconformities}
      />
    </>
  );
};
