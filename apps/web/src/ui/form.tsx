import type { ReactNode } from 'react';
import { Form as KitForm } from 'react-aria-components';

interface FormProps {
  readonly children: ReactNode;
  readonly onSubmit: () => void;
  /** What the service found wrong, by the name of the field. */
  readonly errors: Readonly<Record<string, string>>;
}

/** A form that narrows what is shown, or sends. */
export const Form = ({ children, onSubmit, errors }: FormProps) => (
  <KitForm
    className="filter"
    validationErrors={errors}
    onSubmit={(event) => {
      event.preventDefault();
      onSubmit();
    }}
  >
    {children}
  </KitForm>
);
