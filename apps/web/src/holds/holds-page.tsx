import { useInfiniteQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { HoldListItem } from '@hull-record/contracts';
import { holdsQuery } from '../api/queries-of-holds.js';
import { FilterForm } from '../asked/filter-form.js';
import { PagedTable } from '../asked/paged-table.js';
import { Empty, Page, Section } from '../ui/page.js';
import type { Column } from '../ui/table.js';
import { Day } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { HoldOther } from './hold-other.js';
import { useHeldThing } from './use-held-thing.js';

const route = getRouteApi('/holds');

/** What is on hold, and how far the work of each hold has come. */
export const HoldsPage = () => {
  const { t } = useWords();
  const { which = '' } = route.useSearch();
  const navigate = route.useNavigate();
  const query = useInfiniteQuery(holdsQuery({ which: which === 'all' ? 'all' : 'open', limit: '50' }));
  return (
    <Page title={t('holds.title')} name={t('holds.title')}>
      <p className="lead">{t('holds.lead')}</p>
      <FilterForm
        button={t('app.show')}
        fields={[
          {
            name: 'which',
            label: t('holds.which'),
            kind: 'choice',
            options: [['all', t('holds.all')]],
            none: t('holds.inForce'),
          },
        ]}
        values={{ which }}
        onChosen={(chosen) => void navigate({ search: chosen, replace: true })}
        error={query.error}
      />
      <PagedTable
        what={t('holds.holds')}
        caption={t('holds.list')}
        columns={useHoldColumns()}
        query={query}
        empty={<Empty>{t('holds.none')}</Empty>}
      />
      <Section name={t('holds.placeOther')}>
        <HoldOther />
      </Section>
    </Page>
  );
};

const useHoldColumns = (): readonly Column<HoldListItem>[] => {
  const { t, term } = useWords();
  const thing = useHeldThing();
  return [
    {
      head: t('holds.on'),
      cell: ({ id, on }) => (
        <Link to="/holds/$hold" params={{ hold: id }}>
          {thing(on)}
        </Link>
      ),
      names: true,
    },
    { head: t('holds.kind'), cell: ({ kind }) => term(kind) },
    { head: t('record.reason'), cell: ({ reason }) => <Said text={reason} /> },
    { head: t('holds.since'), cell: ({ happenedAt }) => <Day at={happenedAt} /> },
    {
      head: t('holds.progress'),
      cell: ({ atHold, disposed }) => t('holds.disposedOf', { disposed, reached: atHold }),
    },
    { head: t('holds.duty'), cell: ({ duty }) => (duty === null ? t('holds.notDecided') : term(duty)) },
    { head: t('holds.end'), cell: ({ ended }) => (ended === null ? t('holds.inForceNow') : term(ended.how)) },
  ];
};
