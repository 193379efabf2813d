import type { ChartPoint, ChartView } from '@hull-record/contracts';
import { BoundedTable } from '../record/bounded-table.js';
import { HullLink } from '../record/links.js';
import type { Column } from '../ui/table.js';
import { unitSign } from '../words/figures.js';
import { Day } from '../words/moments.js';
import { useWords } from '../words/use-words.js';
import { useRuleWords } from './use-rule-words.js';

interface Row extends ChartPoint {
  readonly number: number;
}

/** The figures behind the charts, hull by hull, the newest first. */
export const PointsTable = ({ chart }: { readonly chart: ChartView }) => {
  const { t } = useWords();
  const columns = useColumns(chart);
  const rows = chart.points.map((point, i) => ({ ...point, number: i + 1 })).reverse();
  return (
    <BoundedTable
      what={t('charts.hulls')}
      caption={t('charts.tableCaption', { unit: unitSign(chart.unit) })}
      columns={columns}
      rows={rows}
    />
  );
};

const useColumns = (chart: ChartView): readonly Column<Row>[] => {
  const { t, figure } = useWords();
  const wordsOf = useRuleWords(chart);
  const or = (value: number | null | undefined): string => (typeof value === 'number' ? figure(value, 4) : '–');
  return [
    { head: t('charts.number'), cell: ({ number }) => number, class: 'r' },
    { head: t('charts.hull'), cell: ({ hull, part }) => (hull === null ? part : <HullLink to={hull} />), names: true },
    { head: t('charts.read'), cell: ({ at }) => <Day at={at} /> },
    { head: t('charts.readings'), cell: ({ readings }) => readings, class: 'r' },
    { head: t('charts.mean'), cell: ({ mean }) => figure(mean, 4), class: 'r' },
    { head: t('charts.movingRange'), cell: ({ movingRange }) => or(movingRange), class: 'r' },
    { head: t('charts.deviation'), cell: ({ within }) => or(within?.deviation), class: 'r' },
    { head: t('charts.weightedMean'), cell: ({ ewma }) => figure(ewma.value, 4), class: 'r' },
    { head: t('charts.highSum'), cell: ({ cusum }) => figure(cusum.high, 3), class: 'r' },
    { head: t('charts.lowSum'), cell: ({ cusum }) => figure(cusum.low, 3), class: 'r' },
    { head: t('charts.breaks'), cell: (point) => wordsOf(point).join('; ') || '–' },
  ];
};
