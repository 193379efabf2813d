import { FieldError, Input, Label, Text, TextArea, TextField as KitField } from 'react-aria-components';

interface TextFieldProps {
  /** By which the service's complaints find the field. */
  readonly name?: string;
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: string | undefined;
  /**
   * `percent` takes a number from 0 to 100, `mm` one that may be negative, `decimal` is kept digit by digit, `lines` takes several lines, `words` a
   * sentence; `secret` is not shown; `day` and `moment` are as the browser asks for them.
   */
  readonly kind: 'text' | 'words' | 'percent' | 'mm' | 'decimal' | 'lines' | 'secret' | 'day' | 'moment';
  /** What the browser may fill in (HTML, autofill). */
  readonly fills?: string;
}

/** A field to type into, with its label, a hint and what was found wrong with it. */
export const TextField = ({ name, label, value, onChange, hint, kind, fills = 'off' }: TextFieldProps) => (
  <KitField
    className="field"
    {...(name === undefined ? {} : { name })}
    value={value}
    onChange={onChange}
    type={TYPES[kind]}
    autoComplete={fills}
    spellCheck="false"
    {...(kind === 'lines' ? {} : { maxLength: LONGEST[kind] ?? 60 })}
  >
    <Label>{label}</Label>
    {kind === 'lines' ? <TextArea rows={3} /> : <Input {...(MORE[kind] ?? {})} />}
    {hint === undefined ? null : (
      <Text slot="description" className="note soft">
        {hint}
      </Text>
    )}
    <FieldError className="note wrong" />
  </KitField>
);

const TYPES = {
  ...{
    text: 'text',
    words: 'text',
    lines: 'text',
    decimal: 'text',
    percent: 'number',
    mm: 'number',
    secret: 'password',
  },
  ...{ day: 'date', moment: 'datetime-local' },
} as const;
const LONGEST: Readonly<Record<string, number>> = { secret: 200, words: 400 };
const MORE: Readonly<Record<string, object>> = {
  percent: { min: 0, max: 100, step: 'any', inputMode: 'decimal' },
  mm: { min: -100_000, max: 100_000, step: 'any', inputMode: 'decimal' },
  decimal: { inputMode: 'decimal' },
};
