import { FieldError, Input, Label, Text, TextField as KitField } from 'react-aria-components';

interface MeasureFieldProps {
  readonly label: string;
  /** As typed; a comma is as good as a point. */
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: string | undefined;
  /** Whole numbers alone, or decimals. */
  readonly whole?: boolean;
  readonly wrong?: string | undefined;
}

/** A figure to type, large, with the device's keys for numbers; the label names the unit. */
export const MeasureField = ({ label, value, onChange, hint, whole = false, wrong }: MeasureFieldProps) => (
  <KitField
    className="field measure"
    value={value}
    onChange={onChange}
    autoComplete="off"
    isInvalid={wrong !== undefined}
    maxLength={12}
  >
    <Label>{label}</Label>
    <Input className="n" inputMode={whole ? 'numeric' : 'decimal'} />
    {hint === undefined ? null : (
      <Text slot="description" className="soft">
        {hint}
      </Text>
    )}
    <FieldError className="wrong">{wrong}</FieldError>
  </KitField>
);
