import { Joined } from '../ui/joined.js';
import { Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { mark, type Shape } from './mark.js';

const SHAPES: Readonly<Record<string, Shape>> = {
  released: 'inside',
  quarantined: 'tape',
  held: 'tape',
  rejected: 'stopped',
};

interface LotStateProps {
  readonly state: string;
  /** Kinds of the holds in force on all of it. */
  readonly holds?: readonly string[];
}

/** The state of a lot; a hold goes before it, for whoever reads one word alone. */
export const LotState = ({ state, holds = [] }: LotStateProps) => {
  const { t } = useWords();
  if (holds.length === 0) return <span className="nb">{mark(SHAPES[state] ?? 'none', <Term word={state} />)}</span>;
  return (
    <span>
      <span className="nb">
        {mark(
          'stopped',
          <>
            {t('lots.onHold')}{' '}
            <Joined by=", ">
              {holds.map((kind) => (
                <Term key={kind} word={kind} />
              ))}
            </Joined>
          </>,
        )}
      </span>{' '}
      <span className="soft">
        (<Term word={state} />)
      </span>
    </span>
  );
};
