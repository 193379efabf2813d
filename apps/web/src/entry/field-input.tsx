import { Choice } from '../ui/choice.js';
import { TextField } from '../ui/text-field.js';
import { Tick } from '../ui/tick.js';
import { useWords } from '../words/use-words.js';
import type { EntryField } from './entry-field.js';

interface FieldInputProps {
  readonly of: EntryField;
  readonly value: string;
  readonly wrong: string | undefined;
  readonly onChange: (value: string) => void;
}

/** One field of a record, as its kind asks. */
export const FieldInput = ({ of, value, wrong, onChange }: FieldInputProps) => {
  const { t } = useWords();
  const { name, label, hint, kind = 'text', options = [], none } = of;
  if (kind === 'tick')
    return <Tick name={name} label={label} on={value === 'yes'} onChange={(on) => onChange(on ? 'yes' : '')} />;
  if (kind === 'choice')
    return <Choice {...{ name, label, hint, value, options, wrong, onChange }} none={none ?? t('entry.choose')} />;
  return <TextField {...{ name, label, hint, kind, value, onChange }} />;
};
