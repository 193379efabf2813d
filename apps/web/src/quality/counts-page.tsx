import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import type { DefectCounts } from '@hull-record/contracts';
import { defectCountsQuery, hullCountsQuery } from '../api/queries-of-quality.js';
import { Answer } from '../asked/answer.js';
import { FilterForm } from '../asked/filter-form.js';
import { Empty, Page, Section } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { QualityWays } from './quality-ways.js';

const route = getRouteApi('/quality/counts');
const BY = ['kind', 'zone', 'mold', 'material'] as const;

/** Defects per hull made, by kind, zone, mold or material; and how many hulls are where. Nothing counts people. */
export const CountsPage = () => {
  const { t } = useWords();
  const { by = 'kind', from = '', to = '' } = route.useSearch();
  const navigate = route.useNavigate();
  const counts = useQuery(defectCountsQuery({ by, from, to }));
  const hulls = useQuery(hullCountsQuery);
  return (
    <Page title={t('quality.counts')} name={t('quality.counts')}>
      <QualityWays />
      <FilterForm
        button={t('app.show')}
        fields={[
          {
            name: 'by',
            label: t('quality.countedBy'),
            kind: 'choice',
            options: BY.slice(1).map((each) => [each, t(`quality.by.${each}`)]),
            none: t('quality.by.kind'),
          },
          { name: 'from', label: t('quality.begunFrom'), kind: 'day', pointer: '/from' },
          { name: 'to', label: t('quality.begunTo'), kind: 'day', pointer: '/to' },
        ]}
        values={{ by: by === 'kind' ? '' : by, from, to }}
        onChosen={(search) => void navigate({ search, replace: true })}
        error={counts.error}
      />
      <Section name={t('quality.perHullMade')}>
        <Answer what={t('quality.theCounts')} query={counts}>
          {(found) => <Counts counts={found} />}
        </Answer>
      </Section>
      <Section name={t('quality.hullsByState')}>
        <Answer what={t('quality.theHullCounts')} query={hulls}>
          {(rows) =>
            rows.length === 0 ? (
              <Empty>{t('quality.noHulls')}</Empty>
            ) : (
              <Table
                caption={t('quality.hullsByStateCaption')}
                columns={[
                  { head: t('record.now'), cell: ({ what }) => <Term word={what} />, names: true },
                  { head: t('app.nav.hulls'), cell: ({ hulls: count }) => count, class: 'r' },
                ]}
                rows={rows}
              />
            )
          }
        </Answer>
      </Section>
    </Page>
  );
};

const Counts = ({ counts: { by, groups, hullsMade, notShown } }: { readonly counts: DefectCounts }) => {
  const { t, kind, term, figure } = useWords();
  const name = (group: string): string => {
    if (by === 'kind') return kind(group);
    return by === 'zone' ? group.split(', ').map(term).join(', ') : group;
  };
  const [most] = groups;
  if (most === undefined) return <Empty>{t('quality.tooFew', { hulls: hullsMade })}</Empty>;
  return (
    <>
      <p className="lead">
        {t('quality.most', { name: name(most.name), perHull: figure(most.perHull, 2), hulls: hullsMade })}
      </p>
      <Table
        caption={t('quality.countsCaption')}
        columns={[
          { head: t(`quality.by.${by}`), cell: ({ name: of }) => name(of), names: true },
          {
            head: t('quality.perHull'),
            cell: ({ perHull }) => (
              <span className="bar-and-figure">
                <Bar share={perHull / (most.perHull || 1)} />
                {figure(perHull, 2)}
              </span>
            ),
            class: 'r',
          },
          { head: t('record.defects'), cell: ({ defects }) => defects, class: 'r' },
          { head: t('quality.ofHulls'), cell: ({ hulls }) => hulls, class: 'r' },
        ]}
        rows={groups}
      />
      <p className="note soft">
        {t('quality.countsNote')} {notShown === 0 ? '' : t('quality.notShown', { count: notShown })}
      </p>
    </>
  );
};

/** How a figure compares with the largest; the figure stands beside it. */
const Bar = ({ share }: { readonly share: number }) => (
  <svg className="count-bar" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
    <rect width={Math.max(0.5, share * 100)} height="10" />
  </svg>
);
