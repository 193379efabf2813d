import type { EntryField } from '../entry-field.js';
import { FieldInput } from '../field-input.js';
import { useDraftFields } from './draft-context.js';

interface DraftInputProps extends Pick<EntryField, 'kind' | 'options' | 'hint' | 'none'> {
  /** Where it stands in the draft, and in what is sent (RFC 6901). */
  readonly at: string;
}

/** One field of a draft, with its label and with what was found wrong with it. */
export const DraftInput = ({ at, ...more }: DraftInputProps) => {
  const fields = useDraftFields();
  const value = fields.at(at);
  return (
    <FieldInput
      of={{ name: at, label: fields.labelOf(at) ?? '', ...more }}
      value={typeof value === 'string' ? value : ''}
      wrong={fields.wrongAt(at)}
      onChange={(typed) => fields.put(at, typed)}
    />
  );
};
