import { converted } from '../words/measures.js';
import { judgeSpot, type Limits } from '@hull-record/trade';
import { useState } from 'react';
import { mark } from '../marks/mark.js';
import { Button } from '../ui/button.js';
import { unitSign } from '../words/figures.js';
import { useWords } from '../words/use-words.js';
import { teethAround, type Tooth } from './teeth.js';

/** So many teeth are shown at once: with the two keys that move them, rows of six or of three are full. */
const SHOWN = 10;

interface FilmKeysProps {
  readonly limits: Limits;
  readonly onTooth: (tooth: Tooth, unit: 'mil' | 'um') => void;
}

/** The teeth of a wet-film gauge as keys: one touch is one reading. Each says which side of the limits it lies on. */
export const FilmKeys = ({ limits, onTooth }: FilmKeysProps) => {
  const { t, figure } = useWords();
  const [page, setPage] = useState(0);
  const unit = limits.unit === 'um' ? 'um' : 'mil';
  const other = unit === 'mil' ? 'um' : 'mil';
  return (
    <div className="st-pad" role="group" aria-label={t('read.lastTooth')}>
      {teethAround(limits, unit, SHOWN, page).map((tooth) => {
        const judged = judgeSpot({ low: tooth.last, high: tooth.next, unit }, limits);
        const side = judged.side ?? 'in';
        const words = t(`read.key.${side}`);
        return (
          <Button key={tooth.last} className={`st-key st-key-${side}`} onPress={() => onTooth(tooth, unit)}>
            <b>{tooth.last}</b>
            {mark(side === 'in' ? 'inside' : 'none', words)}
            <i>{`${unitSign(unit)}, ${figure(converted(tooth.last, unit, other), 3)} ${unitSign(other)}`}</i>
          </Button>
        );
      })}
      <Button className="st-key st-key-words" onPress={() => setPage((at) => at - 1)}>
        {t('read.thinner')}
      </Button>
      <Button className="st-key st-key-words" onPress={() => setPage((at) => at + 1)}>
        {t('read.thicker')}
      </Button>
    </div>
  );
};
