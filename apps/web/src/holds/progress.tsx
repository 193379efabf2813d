import type { HoldView } from '@hull-record/contracts';
import { Facts } from '../ui/page.js';
import { useWords } from '../words/use-words.js';

type Figures = HoldView['figures'];

/** How far a hold has come: one bar of hulls, the sentence that says it, and the counts behind it. */
export const Progress = ({ figures }: { readonly figures: Figures }) => {
  const { t, term } = useWords();
  const { reached, disposed, open, below, atHold } = figures;
  return (
    <>
      <Bar disposed={disposed} reached={reached} />
      <p>
        {reached === 0 ? t('holds.reachesNone') : t('holds.reaches', { reached, disposed, open })}{' '}
        <span className="soft">{t('holds.belowIt', { below, atHold })}</span>
      </p>
      <Facts
        rows={[
          [t('holds.lookedAt'), figures.lookedAt],
          [t('holds.found'), figures.found],
          [t('holds.repaired'), figures.repaired],
          [t('holds.cleared'), figures.cleared],
          [t('holds.notReachable'), figures.notReachable],
          [t('holds.left'), figures.left],
          ...figures.states.map(({ state, hulls }) => [term(state), hulls] as const),
        ]}
      />
    </>
  );
};

/** A row of planks, the sound ones laid: as long as the hulls reached, drawn as far as they are disposed of. */
const Bar = ({ disposed, reached }: { readonly disposed: number; readonly reached: number }) => {
  const { t } = useWords();
  if (reached === 0) return null;
  const share = (100 * disposed) / reached;
  return (
    <svg
      className="planks"
      viewBox="0 0 100 4"
      preserveAspectRatio="none"
      role="img"
      aria-label={t('holds.disposedOf', { disposed, reached })}
    >
      <rect x="0" y="0" width="100" height="4" className="planks-all" />
      <rect x="0" y="0" width={share} height="4" className="planks-done" />
    </svg>
  );
};
