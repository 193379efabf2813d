import type { ReactNode } from 'react';
import { Form as KitForm } from 'react-aria-components';

interface FormProps {
  readonly children: ReactNode;
  readonly onSubmit: () => void;
  /** What the service found wrong, by the name of the field. */
  readonly errors?: Readonly<Record<string, string>>;
  /** Who says what is wrong: the browser too, before it is sent, or the service alone. */
  readonly checkedBy?: 'browser' | 'service';
}

/** A form that narrows what is shown, or sends. */
export const Form = ({ children, onSubmit, errors = {}, checkedBy = 'browser' }: FormProps) => (
  <KitForm
    className={checkedBy === 'browser' ? 'filter' : 'filter entry'}
    validationBehavior={checkedBy === 'browser' ? 'native' : 'aria'}
    validationErrors={errors}
    onSubmit={(event) => {
      event.preventDefault();
      onSubmit();
    }}
  >
    {children}
  </KitForm>
);
