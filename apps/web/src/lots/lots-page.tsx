import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { lotsQuery, materialsQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { FilterForm, type Chosen } from '../asked/filter-form.js';
import { PagedTable } from '../asked/paged-table.js';
import { NoLots } from '../record/nothing-yet.js';
import { useLotColumns } from '../record/use-lot-columns.js';
import { Empty, Page } from '../ui/page.js';
import { useWords } from '../words/use-words.js';

const route = getRouteApi('/lots');

const STATES = ['quarantined', 'released', 'held', 'rejected'] as const;
const ORIGINS = ['received', 'mixed', 'tank', 'cut'] as const;
type Name = 'search' | 'state' | 'material' | 'origin';

/** All lots, the newest first, narrowed by code, state, material and origin. */
export const LotsPage = () => {
  const { t } = useWords();
  const { search = '', state = '', material = '', origin = '' } = route.useSearch();
  const chosen = { search, state, material, origin };
  const navigate = route.useNavigate();
  const query = useInfiniteQuery(lotsQuery({ ...chosen, limit: '50' }));
  const columns = useLotColumns();
  const narrowed = Object.values(chosen).some((value) => value !== '');
  return (
    <Page title={t('app.nav.lots')} name={t('app.nav.lots')}>
      <LotFilter
        chosen={chosen}
        onChosen={(values) => void navigate({ search: values, replace: true })}
        error={query.error}
      />
      <PagedTable
        what={t('app.lots')}
        caption={t('lots.caption')}
        columns={columns}
        query={query}
        empty={narrowed ? <Empty>{t('lots.noneSuch')}</Empty> : <NoLots />}
      />
    </Page>
  );
};

interface LotFilterProps {
  readonly chosen: Chosen<Name>;
  readonly onChosen: (chosen: Chosen<Name>) => void;
  readonly error: unknown;
}

const LotFilter = ({ chosen, onChosen, error }: LotFilterProps) => {
  const { t, term } = useWords();
  const query = useQuery(materialsQuery);
  return (
    <Answer what={t('lots.materialsToChoose')} query={query}>
      {(materials) => (
        <FilterForm<Name>
          button={t('app.show')}
          fields={[
            { name: 'search', label: t('lots.searchLabel'), kind: 'text', pointer: '/search' },
            {
              name: 'state',
              label: t('record.state'),
              kind: 'choice',
              options: STATES.map((each) => [each, term(each)]),
            },
            {
              name: 'material',
              label: t('record.material'),
              kind: 'choice',
              options: materials.map(({ code, name }) => [code, name]),
            },
            {
              name: 'origin',
              label: t('lots.origin'),
              kind: 'choice',
              options: ORIGINS.map((each) => [each, t(`record.origin.${each}`)]),
            },
          ]}
          values={chosen}
          onChosen={onChosen}
          error={error}
        />
      )}
    </Answer>
  );
};
