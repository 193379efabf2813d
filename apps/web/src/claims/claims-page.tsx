import { useInfiniteQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { ClaimListItem } from '@hull-record/contracts';
import { DEFECT_KINDS } from '@hull-record/trade';
import { claimsQuery } from '../api/queries-of-claims.js';
import { useMay } from '../api/use-may.js';
import { AfterSaleWords } from '../asked/after-sale-words.js';
import { FilterForm, type Field } from '../asked/filter-form.js';
import { PagedTable } from '../asked/paged-table.js';
import { HullLink } from '../record/links.js';
import { Empty, Page } from '../ui/page.js';
import type { Column } from '../ui/table.js';
import { CalendarDay } from '../words/moments.js';
import { useWords } from '../words/use-words.js';

const route = getRouteApi('/claims');
const FILTERS = ['which', 'kind', 'prompted', 'hull'] as const;
type FilterName = (typeof FILTERS)[number];

/** How a choice of the address is asked for; anything else asks for all. */
const ASKED: Readonly<Record<string, string>> = {
  open: 'true',
  decided: 'false',
  prompted: 'true',
  unprompted: 'false',
};

/** The desk of claims: what was reported, what waits for a decision, and a way to file another. */
export const ClaimsPage = () => (
  <AfterSaleWords>
    <Desk />
  </AfterSaleWords>
);

const Desk = () => {
  const { t } = useWords();
  const may = useMay();
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const values = Object.fromEntries(FILTERS.map((name) => [name, search[name] ?? ''])) as Record<FilterName, string>;
  const query = useInfiniteQuery(
    claimsQuery({
      ...{ hull: values.hull, kind: values.kind, limit: '50' },
      ...{ undecided: ASKED[values.which], prompted: ASKED[values.prompted] },
    }),
  );
  return (
    <Page title={t('claims.title')} name={t('claims.title')}>
      <p className="lead">{t('claims.lead')}</p>
      <p className="buttons">
        {may('fileClaim') ? (
          <Link to="/claims/new" search={values.hull === '' ? {} : { hull: values.hull }} className="btn">
            {t('claims.file')}
          </Link>
        ) : null}
        <Link to="/warranty" className="btn">
          {t('warranty.title')}
        </Link>
      </p>
      <FilterForm
        button={t('app.show')}
        fields={useFilters()}
        values={values}
        onChosen={(chosen) => void navigate({ search: chosen, replace: true })}
        error={query.error}
      />
      <PagedTable
        what={t('claims.claims')}
        caption={t('claims.list')}
        columns={useClaimColumns()}
        query={query}
        empty={<Empty>{Object.values(values).join('') === '' ? t('claims.none') : t('claims.noneSuch')}</Empty>}
        note={t('claims.firstOnly')}
      />
    </Page>
  );
};

const useFilters = (): readonly Field<FilterName>[] => {
  const { t, kind } = useWords();
  return [
    {
      name: 'which',
      label: t('claims.which'),
      kind: 'choice',
      options: [
        ['open', t('claims.which.open')],
        ['decided', t('claims.which.decided')],
      ],
      none: t('claims.which.all'),
    },
    {
      name: 'kind',
      label: t('claims.kind'),
      kind: 'choice',
      options: DEFECT_KINDS.map(({ code }) => [code, kind(code)]),
    },
    {
      name: 'prompted',
      label: t('claims.foundBy'),
      kind: 'choice',
      options: [
        ['unprompted', t('claims.unprompted')],
        ['prompted', t('claims.prompted')],
      ],
    },
    { name: 'hull', label: t('claims.hullHint'), kind: 'text', pointer: '/hull' },
  ];
};

const useClaimColumns = (): readonly Column<ClaimListItem>[] => {
  const { t, term, kind } = useWords();
  return [
    {
      head: t('claims.claim'),
      cell: ({ id, mark, hull }) => (
        <Link to="/claims/$claim" params={{ claim: id }}>
          {t('claims.of', { mark, hull })}
        </Link>
      ),
      names: true,
      class: 'n',
    },
    { head: t('record.hull'), cell: ({ hull }) => <HullLink to={hull} />, class: 'n' },
    { head: t('record.model'), cell: ({ model }) => model, class: 'n' },
    { head: t('claims.kind'), cell: (claim) => kind(claim.kind) },
    { head: t('claims.reportedOn'), cell: ({ reportedOn }) => <CalendarDay at={reportedOn} /> },
    { head: t('claims.dealer'), cell: ({ dealer }) => dealer ?? '–', class: 'n' },
    { head: t('claims.reference'), cell: ({ reference }) => reference ?? '–', class: 'n' },
    {
      head: t('claims.compared'),
      cell: ({ prompted, first }) =>
        prompted ? t('claims.promptedNot') : first ? t('claims.isCompared') : t('claims.notFirst'),
    },
    {
      head: t('claims.decision'),
      cell: ({ decision }) => (decision === null ? t('claims.waits') : term(decision)),
    },
  ];
};
