import type { ReadingView } from '@hull-record/contracts';
import { mark, type Shape } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { useWords } from '../words/use-words.js';

interface SpotsProps {
  readonly readings: readonly ReadingView[];
}

/** So many spots are listed as they are; of more, those inside their limits are counted and unfold. */
const LISTED = 4;

/** The spots of one kind of reading, each with its verdict. */
export const Spots = ({ readings }: SpotsProps) => {
  const { t } = useWords();
  const inside = readings.filter(({ verdict: word, crossesLimit }) => word === 'inside' && !crossesLimit);
  if (readings.length <= LISTED || inside.length === 0) return <List readings={readings} />;
  const others = readings.filter((reading) => !inside.includes(reading));
  const counts = { inside: inside.length, all: readings.length };
  const words = others.length === 0 ? t('readings.allInside', counts) : t('readings.someInside', counts);
  return (
    <>
      {others.length === 0 ? null : <List readings={others} />}
      <Fold summary={mark('inside', words)}>
        <List readings={inside} />
      </Fold>
    </>
  );
};

const List = ({ readings }: SpotsProps) => {
  const { reading } = useWords();
  return (
    <ol className="spots">
      {readings.map((each) => (
        <li key={each.id} value={each.spot}>
          <span className="n">{reading(each.value, each.below, each.unit)}</span> <Verdict of={each} />
        </li>
      ))}
    </ol>
  );
};

const SHAPES: Readonly<Record<string, Shape>> = {
  inside: 'inside',
  outside: 'outside',
  'cannot be judged': 'near',
  'no limit': 'none',
};

const Verdict = ({ of: { verdict, crossesLimit, concession } }: { readonly of: ReadingView }) => {
  const { t, term } = useWords();
  const word = term(verdict);
  if (concession !== null) return mark('near', t('readings.underConcession', { verdict: word, concession }));
  return mark(SHAPES[verdict] ?? 'none', crossesLimit ? t('readings.crossesLimit', { verdict: word }) : word);
};
