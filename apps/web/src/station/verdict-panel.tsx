import { judgeSpot, isUnit, type Limits } from '@hull-record/trade';
import { unitSign } from '../words/figures.js';
import { mark, type Shape } from '../marks/mark.js';
import { useWords } from '../words/use-words.js';

/** A reading as it was entered. */
export interface Entered {
  readonly value: string;
  readonly below: string | null;
  readonly unit: string;
}

interface VerdictPanelProps {
  readonly entered: Entered;
  readonly what: string;
  readonly spot: number;
  readonly limits: Limits | undefined;
}

type Word = 'inside' | 'tooThin' | 'tooThick' | 'tooLow' | 'tooHigh' | 'notJudged';

const wordOf = ({ value, below, unit }: Entered, what: string, limits: Limits | undefined): Word => {
  if (limits === undefined || !isUnit(unit)) return 'notJudged';
  const judged = judgeSpot({ low: Number(value), high: below === null ? undefined : Number(below), unit }, limits);
  if (judged.verdict === 'cannot be judged') return 'notJudged';
  if (judged.verdict === 'inside') return 'inside';
  const isFilm = what === 'wet film';
  if (judged.side === 'low') return isFilm ? 'tooThin' : 'tooLow';
  return isFilm ? 'tooThick' : 'tooHigh';
};

/** The verdict on one spot, in words first, with what was read and the limits it is held to. */
export const VerdictPanel = ({ entered, what, spot, limits }: VerdictPanelProps) => {
  const words = useWords();
  const { t } = words;
  const word = wordOf(entered, what, limits);
  const shape: Shape = word === 'inside' ? 'inside' : word === 'notJudged' ? 'near' : 'outside';
  return (
    <div className={`st-verdict st-verdict-${shape}`} role="status">
      <div className="st-big">
        <b>{t('read.spot', { spot })}</b>
        <span className="n">{entered.value}</span>
        <span>{unitSign(entered.unit)}</span>
      </div>
      <div>
        <p className="st-call">{mark(shape, t(`read.${word}`))}</p>
        <p>{words.reading(entered.value, entered.below, entered.unit)}</p>
        <p>{limits === undefined ? t('read.noLimit') : words.limits(limits)}</p>
      </div>
    </div>
  );
};
