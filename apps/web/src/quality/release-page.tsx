import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { HullView } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { hullQuery, hullsQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { PagedTable } from '../asked/paged-table.js';
import { Allowed } from '../entry/allowed.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { HullLink } from '../record/links.js';
import { useHullColumns } from '../record/use-hull-columns.js';
import { Empty, Page, Section } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { QualityWays } from './quality-ways.js';

const route = getRouteApi('/quality/release');

/** Hulls that are not released: what stands in the way of each, and the release. */
export const ReleasePage = () => {
  const { t } = useWords();
  const { hull = '' } = route.useSearch();
  const query = useInfiniteQuery(hullsQuery({ released: 'no', limit: '50' }));
  const columns = useHullColumns();
  return (
    <Page title={t('quality.release')} name={t('quality.release')}>
      <QualityWays />
      {hull === '' ? null : <Opened key={hull} number={hull} />}
      <Section name={t('quality.notReleased')}>
        <PagedTable
          what={t('app.hulls')}
          caption={t('quality.notReleasedCaption')}
          columns={[
            ...columns,
            {
              head: t('quality.toDo'),
              cell: ({ number }) => (
                <Link
                  to="/quality/release"
                  search={{ hull: number }}
                  aria-label={t('quality.lookAt', { hull: number })}
                >
                  {t('quality.obstacles')}
                </Link>
              ),
            },
          ]}
          query={query}
          empty={<Empty>{t('quality.allReleased')}</Empty>}
        />
      </Section>
    </Page>
  );
};

const Opened = ({ number }: { readonly number: string }) => {
  const { t } = useWords();
  const query = useQuery(hullQuery(number));
  return (
    <div className="opened">
      <Section name={t('quality.releaseOf', { hull: number })}>
        <Answer what={t('quality.releaseOf', { hull: number })} query={query}>
          {(hull) => <Obstacles hull={hull} />}
        </Answer>
      </Section>
    </div>
  );
};

const Obstacles = ({ hull: { number, release } }: { readonly hull: HullView }) => {
  const { t } = useWords();
  const { inTheWay } = release;
  return (
    <>
      <p className="verdict">
        {inTheWay.length === 0
          ? mark('inside', t('quality.nothingInTheWay'))
          : mark('outside', t('quality.inTheWay', { count: inTheWay.length }))}{' '}
        <HullLink to={number} />
      </p>
      {inTheWay.length === 0 ? (
        <Allowed to="releaseHull" what={t('quality.releaseDo')}>
          <RecordForm
            groups={[]}
            button={t('quality.releaseDo')}
            sure={() => t('quality.releaseSure', { hull: number })}
            send={(_, envelope) => post('/api/hulls/:number/releases', { number }, envelope)}
            done={() => <p>{mark('made', t('quality.releasedNow', { hull: number }))}</p>}
          />
        </Allowed>
      ) : (
        <Table
          caption={t('quality.obstaclesCaption')}
          columns={[
            { head: t('record.what'), cell: ({ detail }) => <Said text={detail} />, names: true },
            { head: t('record.part'), cell: ({ part }) => part ?? '–', class: 'n' },
            { head: t('record.layer'), cell: ({ layer }) => layer ?? '–', class: 'n' },
          ]}
          rows={inTheWay}
        />
      )}
    </>
  );
};
