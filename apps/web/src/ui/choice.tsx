import { useId } from 'react';

interface ChoiceProps {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly options: readonly (readonly [value: string, words: string])[];
  /** What the first option says, which stands for no choice. */
  readonly none: string;
  readonly onChange: (value: string) => void;
}

/** A choice from a list; the device shows the list in its own way, which gloves and screen readers know. */
export const Choice = ({ name, label, value, options, none, onChange }: ChoiceProps) => {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select id={id} name={name} value={value} onChange={(event) => onChange(event.target.value)}>
        <option value="">{none}</option>
        {options.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
};
