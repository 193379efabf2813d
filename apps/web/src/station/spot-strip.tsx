import type { NowRecord } from '../day/now.js';
import { mark } from '../marks/mark.js';
import { Button } from '../ui/button.js';
import { useWords } from '../words/use-words.js';

interface SpotStripProps {
  readonly spots: readonly NowRecord['readings'][number][];
  /** How many the schedule asks for. */
  readonly asked: number;
  readonly current: number;
  readonly onAgain: (reading: NowRecord['readings'][number]) => void;
}

/** The spots of a reading in their order: read ones with value and verdict, the next one, those to come. */
export const SpotStrip = ({ spots, asked, current, onAgain }: SpotStripProps) => {
  const { t, plain, term } = useWords();
  const count = Math.max(asked, current, ...spots.map(({ spot }) => spot));
  return (
    <ol className="st-spots" aria-label={t('read.spots')}>
      {Array.from({ length: count }, (_, i) => i + 1).map((number) => {
        const taken = spots.find(({ spot }) => spot === number);
        const name = number === current ? 'st-spot st-spot-now' : 'st-spot';
        if (taken === undefined)
          return (
            <li key={number} className={`${name} st-spot-later`} aria-current={number === current ? 'step' : undefined}>
              <span>{number}</span>
              <span className="soft">{number === current ? t('read.now') : t('read.toCome')}</span>
            </li>
          );
        const outside = taken.verdict === 'outside';
        return (
          <li key={number} className={`${name} ${outside ? 'st-spot-out' : 'st-spot-in'}`}>
            <Button className="st-spot-key" label={t('read.again', { spot: number })} onPress={() => onAgain(taken)}>
              <b className="n">{plain(taken.value)}</b>
              {mark(outside ? 'outside' : 'inside', term(taken.verdict))}
            </Button>
          </li>
        );
      })}
    </ol>
  );
};
