import { FieldError, Input, Label, Text, TextArea, TextField as KitField } from 'react-aria-components';

interface TextFieldProps {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: string | undefined;
  /** `percent` takes a number from 0 to 100, `lines` several lines; `secret` is not shown. */
  readonly kind: 'text' | 'percent' | 'lines' | 'secret';
  /** What the browser may fill in (HTML, autofill). */
  readonly fills?: string;
}

/** A field to type into, with its label, a hint and what was found wrong with it. */
export const TextField = ({ name, label, value, onChange, hint, kind, fills = 'off' }: TextFieldProps) => (
  <KitField
    className="field"
    name={name}
    value={value}
    onChange={onChange}
    type={TYPES[kind]}
    autoComplete={fills}
    spellCheck="false"
    {...(kind === 'lines' ? {} : { maxLength: kind === 'secret' ? 200 : 60 })}
  >
    <Label>{label}</Label>
    {kind === 'lines' ? <TextArea rows={3} /> : <Input {...(kind === 'percent' ? PERCENT : {})} />}
    {hint === undefined ? null : (
      <Text slot="description" className="note soft">
        {hint}
      </Text>
    )}
    <FieldError className="note wrong" />
  </KitField>
);

const TYPES = { text: 'text', lines: 'text', percent: 'number', secret: 'password' } as const;
const PERCENT = { min: 0, max: 100, step: 'any', inputMode: 'decimal' } as const;
