import { useInfiniteQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { hullsQuery, lotsQuery } from '../api/queries.js';
import { FilterForm } from '../asked/filter-form.js';
import { PagedTable } from '../asked/paged-table.js';
import { useHullColumns } from '../record/use-hull-columns.js';
import { useLotColumns } from '../record/use-lot-columns.js';
import { Empty, Page, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { SharedLots } from './shared-lots.js';

const route = getRouteApi('/search');

/** One box for hull numbers, HINs and lot codes; and the lots that some hulls share. */
export const SearchPage = () => {
  const { t } = useWords();
  const { for: search = '', hulls = '' } = route.useSearch();
  const navigate = route.useNavigate();
  return (
    <Page title={t('app.nav.search')} name={t('app.nav.search')}>
      <Section name={t('search.findWhat')}>
        <FilterForm
          button={t('search.find')}
          fields={[{ name: 'for', label: t('search.label'), kind: 'text' }]}
          values={{ for: search }}
          onChosen={(chosen) => void navigate({ search: (now) => ({ ...now, ...chosen }), replace: true })}
        />
        {search === '' ? (
          <Empty>{t('search.type')}</Empty>
        ) : (
          <>
            <Hulls search={search} />
            <Lots search={search} />
          </>
        )}
      </Section>
      <Section name={t('search.shared')}>
        <SharedLots
          asked={hulls}
          onAsked={(asked) => void navigate({ search: (now) => ({ ...now, hulls: asked }), replace: true })}
        />
      </Section>
    </Page>
  );
};

interface FoundProps {
  readonly search: string;
}

const Hulls = ({ search }: FoundProps) => {
  const { t } = useWords();
  const query = useInfiniteQuery(hullsQuery({ search, limit: '20' }));
  return (
    <PagedTable
      what={t('app.hulls')}
      caption={t('search.hullsOf', { search })}
      columns={useHullColumns()}
      query={query}
      empty={<None words={t('search.noHulls', { search })} />}
    />
  );
};

const Lots = ({ search }: FoundProps) => {
  const { t } = useWords();
  const query = useInfiniteQuery(lotsQuery({ search, limit: '20' }));
  return (
    <PagedTable
      what={t('app.lots')}
      caption={t('search.lotsOf', { search })}
      columns={useLotColumns()}
      query={query}
      empty={<None words={t('search.noLots', { search })} />}
    />
  );
};

const None = ({ words }: { readonly words: string }) => {
  const { t } = useWords();
  return (
    <Empty>
      {words} {t('search.typeLess')}
    </Empty>
  );
};
