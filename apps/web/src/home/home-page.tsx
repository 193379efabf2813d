import { useInfiniteQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { RouteName } from '@hull-record/contracts';
import type { ReactNode } from 'react';
import { hullsQuery } from '../api/queries.js';
import { useMay } from '../api/use-may.js';
import { PagedTable } from '../asked/paged-table.js';
import { NoHulls } from '../record/nothing-yet.js';
import { useHullColumns } from '../record/use-hull-columns.js';
import { Page, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { DemoProgress } from './demo-progress.js';

const NEWEST = { limit: '5' };

/** What this is, where to go, how far the demo is, and the newest hulls. */
export const HomePage = () => {
  const { t } = useWords();
  const may = useMay();
  return (
    <Page title={t('home.title')} name={t('home.heading')}>
      <p className="lead">{t('home.lead')}</p>
      <DemoProgress />
      <Section name={t('home.where')}>
        <Ways />
      </Section>
      {may('listHulls') ? (
        <Section name={t('home.newest')}>
          <NewestHulls />
        </Section>
      ) : null}
    </Page>
  );
};

const NewestHulls = () => {
  const { t } = useWords();
  const query = useInfiniteQuery(hullsQuery(NEWEST));
  const columns = useHullColumns();
  return (
    <PagedTable
      what={t('app.hulls')}
      caption={t('home.newestCaption')}
      columns={columns}
      query={query}
      empty={<NoHulls />}
    />
  );
};

const Ways = () => {
  const { t } = useWords();
  const may = useMay();
  const ways: readonly (readonly [RouteName | null, ReactNode, string])[] = [
    ['listOwnHulls', <Link to="/own-hulls">{t('ownHulls.title')}</Link>, t('home.toOwnHulls')],
    ['recordLayer', <a href="/station">{t('home.station')}</a>, t('home.toStation')],
    ['listHulls', <Link to="/hulls">{t('app.nav.hulls')}</Link>, t('home.toHulls')],
    ['listLots', <Link to="/lots">{t('app.nav.lots')}</Link>, t('home.toLots')],
    ['listHulls', <Link to="/search">{t('app.nav.search')}</Link>, t('home.toSearch')],
    ['listClaims', <Link to="/claims">{t('app.nav.claims')}</Link>, t('home.toClaims')],
    ['listHolds', <Link to="/holds">{t('holds.title')}</Link>, t('home.toHolds')],
    [null, <a href="/api/docs">{t('home.api')}</a>, t('home.toApi')],
  ];
  return (
    <ul className="ways">
      {ways.map(([to, link, words]) =>
        to !== null && !may(to) ? null : (
          <li key={words}>
            {link}
            <span>{words}</span>
          </li>
        ),
      )}
    </ul>
  );
};
