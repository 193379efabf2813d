import { Toggle } from '../ui/toggle.js';
import { useWords } from '../words/use-words.js';
import { spanWords } from './span-words.js';

const AGO = [15, 30, 60, 90, 120, 180] as const;

interface BeganChoiceProps {
  readonly began: number | null;
  readonly onChange: (minutes: number) => void;
}

/** How long ago a layer was begun; it ended now. None is chosen beforehand: nobody is led to a time that is not so. */
export const BeganChoice = ({ began, onChange }: BeganChoiceProps) => {
  const { t } = useWords();
  return (
    <div className="st-began" role="group" aria-label={t('lay.began')}>
      <p>{t('lay.began')}</p>
      {AGO.map((minutes) => (
        <Toggle key={minutes} on={began === minutes} onChange={() => onChange(minutes)}>
          {spanWords(minutes)}
        </Toggle>
      ))}
    </div>
  );
};
