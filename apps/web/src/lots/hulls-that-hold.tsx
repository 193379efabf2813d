import { useInfiniteQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { lotHullsQuery } from '../api/queries.js';
import { FilterForm } from '../asked/filter-form.js';
import { PagedTable } from '../asked/paged-table.js';
import { Empty } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { useHolderColumns } from './use-holder-columns.js';

const route = getRouteApi('/lots/$lot');

/** The hulls that hold some of a lot, with a least share to leave the small ones out. */
export const HullsThatHold = ({ lot }: { readonly lot: string }) => {
  const { t } = useWords();
  const { least = '', below = '' } = route.useSearch();
  const navigate = route.useNavigate();
  const columns = useHolderColumns();
  const query = useInfiniteQuery(
    lotHullsQuery(lot, {
      ...(least === '' ? {} : { minShare: String(Number(least) / 100) }),
      ...(below === '' ? {} : { belowFloor: below }),
      limit: '100',
    }),
  );
  return (
    <>
      <p>
        <Link to="/trace/lots/$lot" params={{ lot }}>
          {t('record.traceLot')}
        </Link>
      </p>
      <FilterForm
        button={t('app.show')}
        fields={[
          { name: 'least', label: t('lots.leastShare'), kind: 'percent', pointer: '/minShare' },
          {
            name: 'below',
            label: t('lots.below'),
            kind: 'choice',
            options: [['members only', t('lots.nameThem')]],
            none: t('lots.leaveOut'),
          },
        ]}
        values={{ least, below }}
        onChosen={(chosen) => void navigate({ search: chosen, replace: true })}
        error={query.error}
      />
      <PagedTable
        what={t('lots.hullsAndParts')}
        caption={t('lots.holders', { lot })}
        columns={columns}
        query={query}
        empty={<Empty>{least === '' ? t('lots.noHolders') : t('lots.noHoldersOf', { least })}</Empty>}
        note={t('lots.assumes')}
      />
    </>
  );
};
