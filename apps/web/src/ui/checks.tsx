import type { ReactNode } from 'react';
import { Checkbox, CheckboxGroup, Label } from 'react-aria-components';

interface ChecksProps {
  readonly label: string;
  readonly chosen: readonly string[];
  readonly options: readonly { readonly value: string; readonly words: ReactNode }[];
  readonly onChoose: (chosen: readonly string[]) => void;
}

/** A choice of several, each a large row with a box to tick. */
export const Checks = ({ label, chosen, options, onChoose }: ChecksProps) => (
  <CheckboxGroup className="checks" value={[...chosen]} onChange={onChoose}>
    <Label>{label}</Label>
    {options.map(({ value, words }) => (
      <Checkbox key={value} value={value} className="check">
        <svg width="26" height="26" viewBox="-13 -13 26 26" aria-hidden="true">
          <rect x="-11" y="-11" width="22" height="22" />
          <path d="M-6 0L-2 5L7 -6" />
        </svg>
        <span>{words}</span>
      </Checkbox>
    ))}
  </CheckboxGroup>
);
