import type { OwnHull } from '@hull-record/contracts';
import { useInfiniteQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { paperPath } from '../api/ask.js';
import { ownHullsQuery } from '../api/queries.js';
import { AfterSaleWords } from '../asked/after-sale-words.js';
import { PagedTable } from '../asked/paged-table.js';
import { OwnCertificateCell } from './own-certificate.js';
import { News } from './news.js';
import { Empty, Page } from '../ui/page.js';
import type { Column } from '../ui/table.js';
import { Day } from '../words/moments.js';
import { Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** What a dealer sees: what is to be taken note of, and own hulls: where they are, and their papers. */
export const OwnHullsPage = () => {
  const { t } = useWords();
  const query = useInfiniteQuery(ownHullsQuery);
  return (
    <Page title={t('ownHulls.title')} name={t('ownHulls.title')}>
      <AfterSaleWords>
        <News />
      </AfterSaleWords>
      <PagedTable
        what={t('ownHulls.what')}
        caption={t('ownHulls.caption')}
        columns={useOwnColumns()}
        query={query}
        empty={<Empty>{t('ownHulls.none')}</Empty>}
      />
    </Page>
  );
};

const useOwnColumns = (): readonly Column<OwnHull>[] => {
  const { t } = useWords();
  return [
    {
      head: t('record.hull'),
      cell: ({ number }) => (
        <Link to="/own-hulls/$number" params={{ number }}>
          {number}
        </Link>
      ),
      ...{ names: true, class: 'n' },
    },
    {
      head: t('record.hin'),
      cell: ({ hin }) => (hin === null ? t('record.notYet') : <span className="n">{hin}</span>),
    },
    { head: t('record.model'), cell: ({ model }) => <span className="n">{model}</span> },
    { head: t('ownHulls.life'), cell: ({ life }) => <Life life={life} /> },
    {
      head: t('certificate.certificates'),
      cell: ({ number, certificate }) => <OwnCertificateCell number={number} certificate={certificate} />,
    },
    {
      head: t('hulls.buildRecord'),
      cell: ({ number }) => (
        <a href={paperPath('/api/own-hulls/:number/build-record.pdf', { number })}>{t('hulls.buildRecord')}</a>
      ),
    },
  ];
};

const Life = ({ life }: Pick<OwnHull, 'life'>) => (
  <ul className="plain">
    {life.map(({ what, at }) => (
      <li key={`${what} ${at}`}>
        <Term word={what} /> <Day at={at} />
      </li>
    ))}
  </ul>
);
