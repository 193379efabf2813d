import type { FlawLimitsView } from '@hull-record/contracts';
import type { FlawVerdict } from '@hull-record/trade';
import { mark, type Shape } from '../../marks/mark.js';
import { Said, Text } from '../../words/text.js';
import { useWords } from '../../words/use-words.js';
import type { Words } from '../../words/words.js';
import { judgeDraft, largestMm, type Draft } from './draft.js';

interface VerdictNowProps {
  readonly draft: Draft;
  readonly limits: FlawLimitsView | undefined;
  readonly hull: string | null;
}

/** Kinds of cure, which ask at once for hardness and for where the mix came from. */
const OF_CURE = ['catalyst-slug', 'undercure'];

/** What the limits say of it at once, and what it will do to the release of the hull. */
export const VerdictNow = ({ draft, limits, hull }: VerdictNowProps) => {
  const words = useWords();
  const { t } = words;
  if (draft.kind === '') return null;
  const judged = limits === undefined ? null : judgeDraft(draft, limits);
  const [shape, said] = wordsOf(judged, draft, limits?.level ?? null, words);
  return (
    <div className="verd" role="status">
      {limits === undefined ? null : <p className="said">{mark(shape, said)}</p>}
      <p>{hull === null ? t('bay.holdsPart') : t('bay.holdsHull', { hull })}</p>
      {OF_CURE.includes(draft.kind) ? <p>{t('bay.asksAtOnce')}</p> : null}
      {judged === null ? null : (
        <p className="soft small">
          <Text of="bay.judged.source" with={{ source: <Said text={judged.source} /> }} />
        </p>
      )}
    </div>
  );
};

const wordsOf = (
  judged: FlawVerdict | null,
  { long, wide }: Draft,
  level: FlawLimitsView['level'],
  { t, figure }: Words,
): readonly [Shape, string] => {
  if (judged === null || level === null) return ['near', t('bay.judged.noLevel')];
  const size = largestMm(long, wide);
  if (judged.verdict === 'cannot be judged')
    return ['near', Number.isNaN(size) ? t('bay.judged.noSize') : t('bay.judged.noRow', { level })];
  if (judged.limit === null) return ['outside', t('bay.judged.none', { level })];
  const figures = { size: figure(size, 4), level, limit: figure(judged.limit, 4) };
  if (judged.verdict === 'accepted') return ['inside', t('bay.judged.inside', figures)];
  return ['outside', size > judged.limit ? t('bay.judged.outside', figures) : t('bay.judged.many', { level })];
};
