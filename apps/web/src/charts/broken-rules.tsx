import type { ChartView } from '@hull-record/contracts';
import { mark } from '../marks/mark.js';
import { Folded } from '../record/folded.js';
import { HullLink } from '../record/links.js';
import { useRuleWords } from './use-rule-words.js';
import { useWords } from '../words/use-words.js';

/** The hulls that break a rule, the newest first, each with its rules in words and its number on the charts. */
export const BrokenRules = ({ chart }: { readonly chart: ChartView }) => {
  const { t } = useWords();
  const wordsOf = useRuleWords(chart);
  const broken = chart.points
    .map((point, i) => ({ point, number: i + 1, words: wordsOf(point) }))
    .filter(({ words }) => words.length > 0)
    .reverse();
  if (broken.length === 0) return <p>{mark('inside', t('charts.nothingBroken'))}</p>;
  return (
    <Folded
      atMost={6}
      more={(count) => t('charts.moreBroken', { count })}
      items={broken.map(({ point: { hull, part }, number, words }) => (
        <>
          {mark(
            'outside',
            <>
              <span className="n">{number}</span> {hull === null ? part : <HullLink to={hull} />}: {words.join('; ')}
            </>,
          )}
        </>
      ))}
    />
  );
};
