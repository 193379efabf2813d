import type { OwnerLine } from '@hull-record/contracts';
import { useInfiniteQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { ownersQuery } from '../api/queries-of-owners.js';
import { AfterSaleWords } from '../asked/after-sale-words.js';
import { FilterForm } from '../asked/filter-form.js';
import { PagedTable } from '../asked/paged-table.js';
import { HullLink } from '../record/links.js';
import { Empty, Page } from '../ui/page.js';
import type { Column } from '../ui/table.js';
import { CalendarDay, Day } from '../words/moments.js';
import { Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';

const route = getRouteApi('/owners');

/** Owners of all hulls: what is kept of them, and until when. */
export const OwnersPage = () => (
  <AfterSaleWords>
    <All />
  </AfterSaleWords>
);

const All = () => {
  const { t } = useWords();
  const { hull = '' } = route.useSearch();
  const navigate = route.useNavigate();
  const query = useInfiniteQuery(ownersQuery({ hull, limit: '50' }));
  return (
    <Page title={t('owners.title')} name={t('owners.title')}>
      <p className="lead">{t('owners.lead')}</p>
      <FilterForm
        button={t('app.show')}
        fields={[{ name: 'hull', label: t('record.hull'), kind: 'text' }]}
        values={{ hull }}
        onChosen={(chosen) => void navigate({ search: chosen, replace: true })}
        error={query.error}
      />
      <PagedTable
        what={t('owners.what')}
        caption={t('owners.caption')}
        columns={useOwnerColumns()}
        query={query}
        empty={<Empty>{t('owners.none')}</Empty>}
      />
    </Page>
  );
};

const STATES = { kept: 'owners.isKept', narrowed: 'owners.isNarrowed', erased: 'owners.isErased' } as const;

const useOwnerColumns = (): readonly Column<OwnerLine>[] => {
  const { t } = useWords();
  return [
    {
      head: t('owners.owner'),
      cell: ({ id, name, what }) => (
        <Link to="/owners/$owner" params={{ owner: id }}>
          {name ?? <Term word={what} />}
        </Link>
      ),
      names: true,
    },
    { head: t('record.hull'), cell: ({ hull }) => <HullLink to={hull} /> },
    { head: t('owners.since'), cell: ({ since }) => <Day at={since} /> },
    { head: t('owners.state'), cell: ({ state }) => t(STATES[state]) },
    {
      head: t('owners.keptUntil'),
      cell: ({ keptUntil, legalHolds }) => (
        <>
          {keptUntil === null ? t('owners.nothingKeeps') : <CalendarDay at={keptUntil} />}
          {legalHolds > 0 ? <p>{t('owners.underHold', { count: legalHolds })}</p> : null}
        </>
      ),
    },
  ];
};
