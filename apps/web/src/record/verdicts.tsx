import type { VerdictView } from '@hull-record/contracts';
import { mark, type Shape } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

const SHAPES: Readonly<Record<VerdictView['verdict'], Shape>> = {
  inside: 'inside',
  outside: 'outside',
  'cannot be judged': 'near',
};

interface VerdictsProps {
  readonly verdicts: readonly VerdictView[];
}

/** What was judged by a rule of the trade: each unfolds to what was found, the rule and its source. What is outside is open. */
export const Verdicts = ({ verdicts }: VerdictsProps) => verdicts.map((each) => <Verdict key={each.id} of={each} />);

const Verdict = ({ of: { topic, verdict, detail, rule, source, corrected } }: { readonly of: VerdictView }) => {
  const { t, term } = useWords();
  const said = { topic: term(topic), verdict: term(verdict) };
  const words = corrected ? t('record.judgedAgain', said) : t('record.judged', said);
  return (
    <Fold open={verdict === 'outside'} summary={mark(SHAPES[verdict], words)}>
      <p>
        <Said text={detail} />
      </p>
      <p className="note soft">
        <Said text={`${rule} ${source}`} />
      </p>
    </Fold>
  );
};
