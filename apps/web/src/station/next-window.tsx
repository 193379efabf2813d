import { windowCountdown } from '@hull-record/trade';
import type { NowLayer, NowPart } from '../day/now.js';
import { useNow } from '../day/use-day.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { spanWords } from './span-words.js';

interface NextWindowProps {
  readonly part: NowPart;
  readonly layer: NowLayer;
}

/** The time in which the next layer bonds to this one, as a ruler with now on it, counted down while it is looked at. */
export const NextWindow = ({ part, layer: { scheduled, record } }: NextWindowProps) => {
  const { t, times } = useWords();
  const now = useNow();
  const next = part.layers.find(
    (other) => other.record === null && other.scheduled.predecessors.includes(scheduled.code),
  );
  const window = record?.nextLayer;
  if (!record || !window || !next) return null;
  const [begun, from] = [Date.parse(record.endedAt), Date.parse(window.from)];
  const until = window.until === null ? null : Date.parse(window.until);
  const { state, minutes } = windowCountdown(now, { earliest: from, latest: until ?? Infinity });
  const end = (until ?? Math.max(from, now) + 3_600_000) + (from - begun) / 4;
  const at = (ms: number): number => Math.min(100, Math.max(0, (100 * (ms - begun)) / (end - begun)));
  const words = { layer: next.scheduled.name, time: spanWords(minutes ?? 0) };
  return (
    <div className="st-window">
      <p>
        {state === 'passed' ? t('lay.windowPassed', { layer: words.layer }) : null}
        {state === 'wait' ? t('lay.windowWait', words) : null}
        {state === 'open' && until !== null ? t('lay.windowLeft', words) : null}
        {state === 'open' && until === null ? t('lay.windowOpen', { layer: words.layer }) : null}
      </p>
      <svg className="st-ruler" aria-hidden="true">
        <rect width="100%" height="28" className="st-ruler-all" />
        <rect x={`${at(from)}%`} width={`${at(until ?? end) - at(from)}%`} height="28" className="st-ruler-open" />
        <rect x={`${at(now)}%`} y="-4" width="4" height="36" className="st-ruler-now" />
      </svg>
      <p className="soft">
        {times.minute(window.from)} – {window.until === null ? '' : times.minute(window.until)}{' '}
        <Said text={window.source} />
      </p>
    </div>
  );
};
