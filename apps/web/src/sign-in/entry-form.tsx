import { useMutation } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import { fieldErrors, Refused } from '../api/problem.js';
import { Button } from '../ui/button.js';
import { Form } from '../ui/form.js';
import { TextField } from '../ui/text-field.js';
import { useWords } from '../words/use-words.js';

interface EntryField<Name extends string> {
  readonly name: Name;
  readonly label: string;
  readonly hint?: string;
  readonly secret?: boolean;
  /** What the browser may fill in. */
  readonly fills?: string;
}

interface EntryFormProps<Name extends string, T> {
  readonly fields: readonly EntryField<Name>[];
  readonly button: string;
  readonly send: (typed: Readonly<Record<Name, string>>) => Promise<T>;
  readonly onDone: (answer: T) => void;
}

/** A form that sends what was typed, and says at each field what the service found wrong with it. */
export const EntryForm = <Name extends string, T>({ fields, button, send, onDone }: EntryFormProps<Name, T>) => {
  const nothing = Object.fromEntries(fields.map(({ name }) => [name, ''])) as Record<Name, string>;
  const [typed, setTyped] = useState(nothing);
  const sending = useMutation({ mutationFn: () => send(typed), onSuccess: onDone });
  const errors = useMemo(() => errorsOf(sending.error), [sending.error]);
  return (
    <>
      <Form onSubmit={() => sending.mutate()} errors={errors} checkedBy="service">
        {fields.map(({ name, label, hint, secret, fills }) => (
          <TextField
            key={name}
            name={name}
            label={label}
            hint={hint}
            kind={secret ? 'secret' : 'text'}
            {...(fills === undefined ? {} : { fills })}
            value={typed[name]}
            onChange={(value) => setTyped((before) => ({ ...before, [name]: value }))}
          />
        ))}
        <Button type="submit" className="btn do" busy={sending.isPending}>
          {button}
        </Button>
      </Form>
      <NotDone error={sending.error} />
    </>
  );
};

/** By field. The form forgets one as soon as its field is typed in, so that the same ones must be the same object. */
const errorsOf = (error: Error | null): Readonly<Record<string, string>> =>
  Object.fromEntries(fieldErrors(error).map(({ pointer, detail }) => [pointer.slice(1), detail]));

/** What went wrong, in the words of the service, or that it was not reached. */
const NotDone = ({ error }: { readonly error: Error | null }) => {
  const { t } = useWords();
  // What is wrong with a field is said there.
  const malformed = error instanceof Refused && error.problem?.type === '/problems/invalid-request';
  if (error === null || malformed) return null;
  return (
    <p className="wrong" role="alert">
      {error instanceof Refused ? error.message || t('app.refused', { status: error.status }) : t('app.unreachable')}
    </p>
  );
};
