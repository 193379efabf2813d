import { TextField } from '../ui/text-field.js';
import { useWords } from '../words/use-words.js';

interface DoneByProps {
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** Badges of all who did the work: none of them may accept it. */
export const DoneBy = ({ value, onChange }: DoneByProps) => {
  const { t } = useWords();
  return <TextField label={t('bay.doneBy')} hint={t('bay.doneByHint')} kind="text" value={value} onChange={onChange} />;
};
