import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { lotsQuery, materialsQuery } from '../api/queries.js';
import { balancesQuery, tanksQuery } from '../api/queries-of-store.js';
import { Answer } from '../asked/answer.js';
import { FilterForm } from '../asked/filter-form.js';
import { PagedTable } from '../asked/paged-table.js';
import { useLotColumns } from '../record/use-lot-columns.js';
import { Fold } from '../ui/fold.js';
import { Empty, Page, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { StockInOrder } from './stock-in-order.js';
import { StoreTasks } from './store-tasks.js';
import { RegisterTank } from './register-tank.js';
import { TankDrawings } from './tank-drawing.js';
import { useBalanceColumns } from './use-balance-columns.js';

const route = getRouteApi('/store');

/** The store: what can be done in it, what waits in it, its tanks, and the stock in the order in which it is to be used. */
export const StorePage = () => {
  const { t } = useWords();
  const tanks = useQuery(tanksQuery);
  return (
    <Page title={t('store.title')} name={t('store.title')}>
      <StoreTasks />
      <Section name={t('store.order')}>
        <Order />
      </Section>
      <Section name={t('store.tanks')}>
        <Answer what={t('store.theTanks')} query={tanks}>
          {(found) => (found.length === 0 ? <Empty>{t('store.noTanks')}</Empty> : <TankDrawings tanks={found} />)}
        </Answer>
        <Fold summary={t('store.registerTank')}>
          <RegisterTank />
        </Fold>
      </Section>
      <Section name={t('store.quarantined')}>
        <LotsThatWait state="quarantined" />
      </Section>
      <Section name={t('store.unidentified')}>
        <LotsThatWait origin="unidentified" />
      </Section>
      <Section name={t('store.outOfBalance')}>
        <OutOfBalance />
      </Section>
    </Page>
  );
};

const Order = () => {
  const { t } = useWords();
  const { material = '' } = route.useSearch();
  const navigate = route.useNavigate();
  const query = useQuery(materialsQuery);
  return (
    <Answer what={t('store.theMaterials')} query={query}>
      {(materials) =>
        materials.length === 0 ? (
          <Empty>
            {t('store.noMaterials')} <Link to="/store/materials">{t('store.registerMaterial')}</Link>
          </Empty>
        ) : (
          <>
            <FilterForm
              button={t('app.show')}
              fields={[
                {
                  name: 'material',
                  label: t('record.material'),
                  kind: 'choice',
                  options: materials.map(({ code, name }) => [code, name]),
                  none: t('entry.choose'),
                },
              ]}
              values={{ material }}
              onChosen={(chosen) => void navigate({ search: chosen, replace: true })}
            />
            {material === '' ? (
              <p className="soft">{t('store.chooseMaterial')}</p>
            ) : (
              <StockInOrder material={material} />
            )}
          </>
        )
      }
    </Answer>
  );
};

const LotsThatWait = (which: { readonly state?: 'quarantined'; readonly origin?: 'unidentified' }) => {
  const { t } = useWords();
  const query = useInfiniteQuery(lotsQuery({ ...which, limit: '20' }));
  const columns = useLotColumns('/store/lots/$lot');
  const isState = which.state !== undefined;
  return (
    <PagedTable
      what={isState ? t('store.lotsInQuarantine') : t('store.lotsUnidentified')}
      caption={isState ? t('store.quarantinedCaption') : t('store.unidentifiedCaption')}
      columns={columns}
      query={query}
      empty={<Empty>{isState ? t('store.noneQuarantined') : t('store.noneUnidentified')}</Empty>}
    />
  );
};

const OutOfBalance = () => {
  const { t } = useWords();
  const query = useInfiniteQuery(balancesQuery);
  const columns = useBalanceColumns();
  return (
    <PagedTable
      what={t('store.lotsOutOfBalance')}
      caption={t('store.balancesCaption')}
      columns={columns}
      query={query}
      empty={<Empty>{t('store.allBalance')}</Empty>}
      note={t('store.balancesNote')}
    />
  );
};
