import { useInfiniteQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { hullsQuery } from '../api/queries.js';
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
  const query = useInfiniteQuery(hullsQuery(NEWEST));
  const columns = useHullColumns();
  return (
    <Page title={t('home.title')} name={t('home.heading')}>
      <p className="lead">{t('home.lead')}</p>
      <DemoProgress />
      <Section name={t('home.where')}>
        <Ways />
      </Section>
      <Section name={t('home.newest')}>
        <PagedTable
          what={t('app.hulls')}
          caption={t('home.newestCaption')}
          columns={columns}
          query={query}
          empty={<NoHulls />}
        />
      </Section>
    </Page>
  );
};

const Ways = () => {
  const { t } = useWords();
  const ways: readonly (readonly [ReactNode, string])[] = [
    [<Link to="/hulls">{t('app.nav.hulls')}</Link>, t('home.toHulls')],
    [<Link to="/lots">{t('app.nav.lots')}</Link>, t('home.toLots')],
    [<Link to="/search">{t('app.nav.search')}</Link>, t('home.toSearch')],
    [<a href="/api/docs">{t('home.api')}</a>, t('home.toApi')],
  ];
  return (
    <ul className="ways">
      {ways.map(([link, words]) => (
        <li key={words}>
          {link}
          <span>{words}</span>
        </li>
      ))}
    </ul>
  );
};
