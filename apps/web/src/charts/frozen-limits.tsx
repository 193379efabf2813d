import type { ChartView, FrozenLimits as Frozen } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { Table, type Column } from '../ui/table.js';
import { CalendarDay, Day } from '../words/moments.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

interface OfChart {
  readonly chart: ChartView;
}

/** By which limits a chart is judged, whoever froze them, and freezing others. */
export const FrozenLimits = ({ chart }: OfChart) => {
  const { t } = useWords();
  const columns = useColumns();
  const { frozen, fewest, history } = chart;
  const count = frozen?.hulls ?? chart.hulls;
  return (
    <>
      <p>
        {frozen === null ? (
          mark('to come', t('charts.ownFigures', { count }))
        ) : (
          <>
            {mark('made', t('charts.byFrozen', { count }))}{' '}
            <Text
              of="charts.period"
              with={{ from: <CalendarDay at={frozen.from} />, to: <CalendarDay at={frozen.to} /> }}
            />
          </>
        )}
      </p>
      {count < fewest ? <p>{mark('near', t('charts.fewer', { fewest }))}</p> : null}
      {history.length === 0 ? null : <Table caption={t('charts.history')} columns={columns} rows={history} />}
      <Fold summary={t('charts.freeze')}>
        <Allowed to="freezeChart" what={t('charts.freeze')}>
          <FreezeForm chart={chart} />
        </Allowed>
      </Fold>
    </>
  );
};

const FreezeForm = ({ chart: { what, of, settings } }: OfChart) => {
  const { t } = useWords();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            { name: 'from', label: t('charts.from'), kind: 'day', hint: t('charts.freezeHint') },
            { name: 'to', label: t('charts.to'), kind: 'day' },
            { name: 'reason', label: t('record.reason'), kind: 'words' },
          ],
        },
      ]}
      button={t('charts.freezeDo')}
      sure={() => t('charts.freezeSure')}
      send={(said, envelope) =>
        post(
          '/api/charts/:what/limits',
          { what },
          { ...envelope, ...of, settings, from: said('from'), to: said('to'), reason: said('reason') },
        )
      }
      done={(answer) => <Found of={answer} words={t('charts.frozenNow', { count: answer.result.hulls })} />}
    />
  );
};

const useColumns = (): readonly Column<Frozen>[] => {
  const { t } = useWords();
  return [
    { head: t('charts.frozenOn'), cell: ({ happenedAt }) => <Day at={happenedAt} />, names: true },
    {
      head: t('charts.fromPeriod'),
      cell: ({ from, to }) => (
        <Text of="charts.period" with={{ from: <CalendarDay at={from} />, to: <CalendarDay at={to} /> }} />
      ),
    },
    { head: t('charts.hullsCounted'), cell: ({ hulls }) => hulls, class: 'r' },
    { head: t('record.reason'), cell: ({ reason }) => <Said text={reason} /> },
    { head: t('charts.by'), cell: ({ by }) => by, class: 'n' },
  ];
};
