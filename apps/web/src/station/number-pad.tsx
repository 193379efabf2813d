import { Button } from '../ui/button.js';
import { useWords } from '../words/use-words.js';

interface NumberPadProps {
  readonly typed: string;
  readonly unit: string;
  readonly onChange: (typed: string) => void;
  readonly onEnter: () => void;
}

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0'] as const;
const MOST = 9;

/** The text after one key: a second point and a tenth digit are not taken. */
const typedWith = (typed: string, key: string): string => {
  if (typed.length >= MOST || (key === '.' && typed.includes('.'))) return typed;
  return typed === '0' && key !== '.' ? key : `${typed}${key}`;
};

/** Large keys for a number, for wet gloves; a keyboard or scanner types into it too. */
export const NumberPad = ({ typed, unit, onChange, onEnter }: NumberPadProps) => {
  const { t, language } = useWords();
  const shown = (key: string): string => (key === '.' && language === 'es' ? ',' : key);
  return (
    <div className="st-number">
      <p className="st-typed" aria-live="off">
        <span className="n">{typed === '' ? '–' : typed.replace('.', shown('.'))}</span> {unit}
      </p>
      <div className="st-pad st-pad-digits" role="group" aria-label={t('read.pad')}>
        {DIGITS.map((key) => (
          <Button key={key} className="st-key st-key-digit" onPress={() => onChange(typedWith(typed, key))}>
            {shown(key)}
          </Button>
        ))}
        <Button
          className="st-key st-key-digit"
          label={t('read.backspace')}
          onPress={() => onChange(typed.slice(0, -1))}
        >
          {'⌫'}
        </Button>
      </div>
      <Button className="btn do" onPress={onEnter}>
        {t('read.judge')}
      </Button>
    </div>
  );
};
