import { useInfiniteQuery } from '@tanstack/react-query';
import { concessionsQuery } from '../api/queries-of-quality.js';
import { PagedTable } from '../asked/paged-table.js';
import { HullLink } from '../record/links.js';
import { Empty, Page } from '../ui/page.js';
import { Day } from '../words/moments.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { QualityWays } from './quality-ways.js';

/** What is used as it is, each under the number of its concession. */
export const ConcessionsPage = () => {
  const { t } = useWords();
  const query = useInfiniteQuery(concessionsQuery);
  return (
    <Page title={t('quality.concessions')} name={t('quality.concessions')}>
      <QualityWays />
      <PagedTable
        what={t('quality.concessionsWhat')}
        caption={t('quality.concessionsCaption')}
        columns={[
          { head: t('quality.concession'), cell: ({ concession }) => concession, names: true, class: 'n' },
          {
            head: t('quality.of'),
            cell: ({ of, what }) => (
              <>
                <Term word={of} />: <Said text={what} />
              </>
            ),
          },
          {
            head: t('record.hull'),
            cell: ({ hull, part }) => (hull === null ? (part ?? '–') : <HullLink to={hull} />),
            class: 'n',
          },
          { head: t('record.reason'), cell: ({ reason }) => <Said text={reason} /> },
          { head: t('quality.givenBy'), cell: ({ by }) => by, class: 'n' },
          { head: t('record.when'), cell: ({ happenedAt }) => <Day at={happenedAt} /> },
        ]}
        query={query}
        empty={<Empty>{t('quality.noConcessions')}</Empty>}
      />
    </Page>
  );
};
