import { useInfiniteQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { hullsQuery } from '../api/queries.js';
import { FilterForm } from '../asked/filter-form.js';
import { PagedTable } from '../asked/paged-table.js';
import { NoHulls } from '../record/nothing-yet.js';
import { useHullColumns } from '../record/use-hull-columns.js';
import { Empty, Page } from '../ui/page.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

const route = getRouteApi('/hulls');

/** All hulls, the newest first, or those whose number or HIN holds what was typed. */
export const HullsPage = () => {
  const { t } = useWords();
  const { search = '' } = route.useSearch();
  const navigate = route.useNavigate();
  const query = useInfiniteQuery(hullsQuery({ search, limit: '50' }));
  const columns = useHullColumns();
  return (
    <Page title={t('app.nav.hulls')} name={t('app.nav.hulls')}>
      <FilterForm
        button={t('app.show')}
        fields={[{ name: 'search', label: t('hulls.searchLabel'), kind: 'text', pointer: '/search' }]}
        values={{ search }}
        onChosen={(chosen) => void navigate({ search: chosen, replace: true })}
        error={query.error}
      />
      <PagedTable
        what={t('app.hulls')}
        caption={search === '' ? t('hulls.caption') : t('hulls.captionOf', { search })}
        columns={columns}
        query={query}
        empty={search === '' ? <NoHulls /> : <NoneFound search={search} />}
      />
    </Page>
  );
};

const NoneFound = ({ search }: { readonly search: string }) => (
  <Empty>
    <Text of="hulls.noneFound" with={{ search, link: (inside) => <Link to="/search">{inside}</Link> }} />
  </Empty>
);
