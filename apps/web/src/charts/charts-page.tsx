import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { ChartList } from '@hull-record/contracts';
import { chartsQuery } from '../api/queries-of-charts.js';
import { Answer } from '../asked/answer.js';
import { ChartsWords } from './charts-words.js';
import { mark } from '../marks/mark.js';
import { BoundedTable } from '../record/bounded-table.js';
import { Empty, Page } from '../ui/page.js';
import type { Column } from '../ui/table.js';
import { Day } from '../words/moments.js';
import { Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';

type Listed = ChartList[number];

/** What can be charted: what schedules ask to be read, and the climate of each kind of part. */
export const ChartsPage = () => (
  <ChartsWords>
    <List />
  </ChartsWords>
);

const List = () => {
  const { t } = useWords();
  const query = useQuery(chartsQuery);
  const columns = useColumns();
  return (
    <Page title={t('quality.charts')} name={t('quality.charts')}>
      <p className="lead">{t('charts.lead')}</p>
      <Answer what={t('charts.these')} query={query}>
        {(rows) =>
          rows.length === 0 ? (
            <Empty>{t('charts.none')}</Empty>
          ) : (
            <BoundedTable what={t('charts.these')} caption={t('charts.caption')} columns={columns} rows={rows} />
          )
        }
      </Answer>
    </Page>
  );
};

const useColumns = (): readonly Column<Listed>[] => {
  const { t, term } = useWords();
  return [
    {
      head: t('charts.what'),
      cell: ({ what, model, part, layer }) => (
        <Link to="/charts/$what" params={{ what }} search={{ model, part, ...(layer === null ? {} : { layer }) }}>
          {term(what)}
        </Link>
      ),
      names: true,
    },
    { head: t('charts.model'), cell: ({ model }) => model, class: 'n' },
    { head: t('charts.part'), cell: ({ part }) => <Term word={part} /> },
    {
      head: t('charts.layer'),
      cell: ({ layer, layerName }) => (layer === null ? t('charts.allLayers') : `${layer}, ${layerName ?? ''}`),
    },
    {
      head: t('charts.limits'),
      cell: ({ frozenAt }) =>
        frozenAt === null ? (
          mark('to come', t('charts.notFrozen'))
        ) : (
          <>
            {mark('made', t('charts.frozen'))} <Day at={frozenAt} />
          </>
        ),
    },
  ];
};
