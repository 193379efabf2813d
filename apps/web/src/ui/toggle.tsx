import type { ReactNode } from 'react';
import { ToggleButton } from 'react-aria-components';

interface ToggleProps {
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  readonly children: ReactNode;
}

/** A button that is on or off. */
export const Toggle = ({ on, onChange, children }: ToggleProps) => (
  <ToggleButton className="btn toggle" isSelected={on} onChange={onChange}>
    {children}
  </ToggleButton>
);
