import type { ReactNode } from 'react';
import { Label, Radio, RadioGroup } from 'react-aria-components';

interface Pick<T extends string> {
  readonly value: T;
  readonly words: string;
  /** Drawn above the words. */
  readonly drawing?: ReactNode;
}

interface PicksProps<T extends string> {
  readonly label: string;
  /** Said beside the label, such as where the words come from. */
  readonly aside?: string;
  readonly value: T | undefined;
  readonly picks: readonly Pick<T>[];
  readonly onPick: (value: T) => void;
  readonly className?: string;
}

/** A choice of one among several, each a large key with a drawing: for gloves. */
export const Picks = <T extends string>({ label, aside, value, picks, onPick, className = '' }: PicksProps<T>) => (
  <RadioGroup className={`picks ${className}`} value={value ?? null} onChange={(chosen) => onPick(chosen as T)}>
    <div className="picks-head">
      <Label>{label}</Label>
      {aside === undefined ? null : <span className="soft">{aside}</span>}
    </div>
    <div className="keys">
      {picks.map(({ value: each, words, drawing }) => (
        <Radio key={each} value={each} className="key">
          {drawing}
          <span>{words}</span>
        </Radio>
      ))}
    </div>
  </RadioGroup>
);
