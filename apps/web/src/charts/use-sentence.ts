import type { ChartView } from '@hull-record/contracts';
import { unitSign } from '../words/figures.js';
import { useWords } from '../words/use-words.js';
import { seriesOf, type Drawn } from './series-of.js';

/** Says a chart in a sentence: how many hulls, from what to what, the limits, and how many are marked. */
export const useSentence = (chart: ChartView): ((drawn: Drawn) => string) => {
  const { t, figure } = useWords();
  const unit = unitSign(chart.unit);
  return (drawn) => {
    const spots = seriesOf(drawn, chart);
    const values = spots.flatMap(({ value, second }) => [value, second].filter((each) => typeof each === 'number'));
    const limit = spots.findLast((spot) => spot.limit !== null)?.limit;
    return t('charts.sentence', {
      ...{ hulls: spots.filter(({ value }) => value !== null).length, unit },
      ...{ least: figure(Math.min(...values), 4), most: figure(Math.max(...values), 4) },
      ...{ lower: figure(limit?.lower ?? 0, 4), upper: figure(limit?.upper ?? 0, 4) },
      marked: spots.filter(({ marked }) => marked).length,
    });
  };
};
