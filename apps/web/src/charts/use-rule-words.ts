import type { ChartPoint, ChartView } from '@hull-record/contracts';
import { useWords } from '../words/use-words.js';

/** Says what a hull breaks, rule by rule; nothing of one that breaks none. */
export const useRuleWords = ({ rules }: Pick<ChartView, 'rules'>): ((point: ChartPoint) => readonly string[]) => {
  const { t, figure } = useWords();
  const ruleWords = ({ kind, count, of = count, distance = 0 }: ChartView['rules'][number]): string => {
    const sigmas = figure(distance);
    if (kind === 'trend') return t('charts.rule.trend', { count });
    if (kind === 'alternating') return t('charts.rule.alternating', { count });
    if (kind === 'near') return t('charts.rule.near', { count, sigmas });
    if (kind === 'far') return t('charts.rule.far', { count, sigmas });
    if (distance === 0) return t('charts.rule.run', { count });
    return count === 1 ? t('charts.rule.one', { sigmas }) : t('charts.rule.some', { count, of, sigmas });
  };
  return ({ fired, rangeOut, spreadOut, ewma, cusum }) => [
    ...fired.flatMap((place) => (rules[place] === undefined ? [] : [ruleWords(rules[place])])),
    ...(rangeOut ? [t('charts.rule.range')] : []),
    ...(spreadOut ? [t('charts.rule.spread')] : []),
    ...(ewma.signal ? [t('charts.rule.weighted')] : []),
    ...(cusum.signal ? [t('charts.rule.sum', { count: cusum.since })] : []),
  ];
};
