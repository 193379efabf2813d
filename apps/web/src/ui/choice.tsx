import { useId } from 'react';

interface ChoiceProps {
  readonly name?: string;
  readonly label: string;
  readonly value: string;
  readonly options: readonly (readonly [value: string, words: string])[];
  /** What the first option says, which stands for no choice. */
  readonly none: string;
  readonly onChange: (value: string) => void;
  readonly hint?: string | undefined;
  /** What was found wrong with it. */
  readonly wrong?: string | undefined;
}

/** A choice from a list; the device shows the list in its own way, which gloves and screen readers know. */
export const Choice = ({ name, label, value, options, none, onChange, hint, wrong }: ChoiceProps) => {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        name={name}
        value={value}
        aria-describedby={`${id}-hint ${id}-wrong`}
        aria-invalid={wrong !== undefined}
        onChange={(event) => onChange(event.target.value)}
      >
        <option value="">{none}</option>
        {options.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
      {hint === undefined ? null : (
        <span id={`${id}-hint`} className="note soft">
          {hint}
        </span>
      )}
      {wrong === undefined ? null : (
        <span id={`${id}-wrong`} className="note wrong">
          {wrong}
        </span>
      )}
    </div>
  );
};
