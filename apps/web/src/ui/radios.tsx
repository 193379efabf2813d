import { Label, Radio, RadioGroup } from 'react-aria-components';

interface RadiosProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly options: readonly (readonly [value: T, words: string, language?: string])[];
  readonly onChange: (value: T) => void;
}

/** A choice of one among few, all of them seen. */
export const Radios = <T extends string>({ label, value, options, onChange }: RadiosProps<T>) => (
  <RadioGroup className="radios" value={value} onChange={(chosen) => onChange(chosen as T)}>
    <Label>{label}</Label>
    <div className="units">
      {options.map(([each, words, language]) => (
        <Radio key={each} value={each} className="radio">
          <span lang={language}>{words}</span>
        </Radio>
      ))}
    </div>
  </RadioGroup>
);
