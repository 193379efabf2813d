import { useInfiniteQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { waitingQuery } from '../api/queries-of-quality.js';
import { useMay } from '../api/use-may.js';
import { PagedTable } from '../asked/paged-table.js';
import { Empty, Page, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { Decide } from './decide.js';
import { KeptEntries } from './kept-entries.js';
import { OpenNonconformities } from './open-nonconformities.js';
import { QualityWays } from './quality-ways.js';
import { UnprovedEntries } from './unproved-entries.js';
import { useWaitingColumns } from './use-waiting-columns.js';

const route = getRouteApi('/quality');

/** The quality desk: what waits for a word, the oldest first, each with what is to be said of it. */
export const QualityPage = () => {
  const { t } = useWords();
  const may = useMay();
  const { about = '', act = '', name = '' } = route.useSearch();
  const navigate = route.useNavigate();
  const query = useInfiniteQuery(waitingQuery({}));
  const columns = useWaitingColumns();
  return (
    <Page title={t('quality.title')} name={t('quality.title')}>
      <QualityWays />
      {about === '' ? null : (
        <Decide
          key={`${about} ${act}`}
          about={about}
          act={act}
          name={name}
          onClose={() => void navigate({ search: {} })}
        />
      )}
      <Section name={t('quality.waiting')}>
        <PagedTable
          what={t('quality.things')}
          caption={t('quality.waitingCaption')}
          columns={columns}
          query={query}
          empty={<Empty>{t('quality.nothingWaits')}</Empty>}
        />
      </Section>
      <Section name={t('quality.nonconformities')}>
        <OpenNonconformities />
      </Section>
      <Section name={t('quality.unproved')}>
        <UnprovedEntries />
      </Section>
      {may('listKeptEntries') ? (
        <Section name={t('quality.kept')}>
          <KeptEntries />
        </Section>
      ) : null}
    </Page>
  );
};
