import type { ReactNode } from 'react';

interface GroupProps {
  readonly name: string;
  readonly children: ReactNode;
}

/** Fields of a form that belong together, under the name that they share. */
export const Group = ({ name, children }: GroupProps) => (
  <fieldset className="group">
    <legend>{name}</legend>
    {children}
  </fieldset>
);
