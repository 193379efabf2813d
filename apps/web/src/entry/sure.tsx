import { useEffect, useRef } from 'react';
import { Button } from '../ui/button.js';
import { useWords } from '../words/use-words.js';

interface SureProps {
  readonly words: string;
  readonly busy: boolean;
  readonly onBack: () => void;
}

/** Asks once more before something that is not safe to undo. The way back has the focus: Enter again does nothing. */
export const Sure = ({ words, busy, onBack }: SureProps) => {
  const { t } = useWords();
  const back = useRef<HTMLButtonElement>(null);
  useEffect(() => back.current?.focus(), []);
  return (
    <div className="caution sure" role="group" aria-label={t('entry.sure')}>
      <p>{words}</p>
      <div className="buttons">
        <Button ref={back} onPress={onBack}>
          {t('entry.back')}
        </Button>
        <Button type="submit" className="btn do" busy={busy}>
          {t('entry.yes')}
        </Button>
      </div>
    </div>
  );
};
