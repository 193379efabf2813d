import type { HullView } from '@hull-record/contracts';
import { Section } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** The facts in the life of a boat, the first one first. */
export const Life = ({ life }: Pick<HullView, 'life'>) => {
  const { t } = useWords();
  return (
    <Section name={t('hulls.life')}>
      <Table
        caption={t('hulls.lifeCaption')}
        columns={[
          {
            head: t('record.what'),
            cell: ({ what, dealer }) => (
              <>
                <Term word={what} />
                {dealer === null ? null : ` ${dealer}`}
              </>
            ),
            names: true,
          },
          { head: t('record.when'), cell: ({ happenedAt }) => <Moment at={happenedAt} /> },
          { head: t('hulls.enteredBy'), cell: ({ by }) => by, class: 'n' },
          { head: t('record.note'), cell: ({ note }) => (note === null ? '–' : <Said text={note} />) },
        ]}
        rows={life}
      />
    </Section>
  );
};

/** Every number the hull ever had; each still leads here. */
export const Numbers = ({ numbers }: Pick<HullView, 'numbers'>) => {
  const { t } = useWords();
  return (
    <Section name={t('hulls.numbers')}>
      <Table
        caption={t('hulls.numbersCaption')}
        columns={[
          { head: t('hulls.number'), cell: ({ number }) => number, names: true, class: 'n' },
          { head: t('hulls.kind'), cell: ({ kind }) => <Term word={kind} /> },
          { head: t('record.since'), cell: ({ happenedAt }) => <Moment at={happenedAt} /> },
          { head: t('record.reason'), cell: ({ reason }) => (reason === null ? '–' : <Said text={reason} />) },
        ]}
        rows={numbers}
      />
    </Section>
  );
};
