import { useInfiniteQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { CaseSummary } from '@hull-record/contracts';
import { casesQuery } from '../api/queries-of-cases.js';
import { AfterSaleWords } from '../asked/after-sale-words.js';
import { PagedTable } from '../asked/paged-table.js';
import { Allowed } from '../entry/allowed.js';
import { Empty, Page, Section } from '../ui/page.js';
import type { Column } from '../ui/table.js';
import { Day } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { OpenCase } from './open-case.js';

/** The cases that one may see, with what each came to, and opening another. */
export const CasesPage = () => (
  <AfterSaleWords>
    <Cases />
  </AfterSaleWords>
);

const Cases = () => {
  const { t } = useWords();
  const query = useInfiniteQuery(casesQuery);
  return (
    <Page title={t('cases.title')} name={t('cases.title')}>
      <p className="lead">{t('cases.lead')}</p>
      <PagedTable
        what={t('cases.cases')}
        caption={t('cases.list')}
        columns={useCaseColumns()}
        query={query}
        empty={<Empty>{t('cases.none')}</Empty>}
      />
      <Section name={t('cases.open')}>
        <Allowed to="openCase" what={t('cases.open')}>
          <OpenCase />
        </Allowed>
      </Section>
    </Page>
  );
};

const useCaseColumns = (): readonly Column<CaseSummary>[] => {
  const { t, term } = useWords();
  return [
    {
      head: t('cases.case'),
      cell: ({ code }) => (
        <Link to="/cases/$case" params={{ case: code }}>
          {code}
        </Link>
      ),
      names: true,
      class: 'n',
    },
    { head: t('cases.about'), cell: ({ title }) => <Said text={title} /> },
    { head: t('cases.looks'), cell: ({ looks }) => looks, class: 'r n' },
    {
      head: t('cases.word'),
      cell: ({ verdict, exploratory }) => {
        if (verdict === null) return t('cases.notLooked');
        return exploratory ? t('cases.exploratoryWord', { word: term(verdict) }) : term(verdict);
      },
    },
    { head: t('cases.counsel'), cell: ({ underCounsel }) => (underCounsel ? t('cases.forCounsel') : '–') },
    { head: t('cases.openedOn'), cell: ({ openedAt }) => <Day at={openedAt} /> },
    { head: t('cases.by'), cell: ({ by }) => by, class: 'n' },
  ];
};
