import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef, useState, type ReactNode } from 'react';
import { fieldErrors } from '../api/problem.js';
import { Button } from '../ui/button.js';
import { Form } from '../ui/form.js';
import { Group } from '../ui/group.js';
import { useWords } from '../words/use-words.js';
import { wrongOf, type EntryField, type FieldGroup, type Said, type Wrong } from './entry-field.js';
import { FieldInput } from './field-input.js';
import { NotRecorded } from './not-recorded.js';
import { Sure } from './sure.js';
import { useEnvelope, type EnvelopeSent } from './use-envelope.js';

interface RecordFormProps<T> {
  readonly groups: readonly FieldGroup[];
  readonly button: string;
  /** What stands in the fields at first, and again when it was recorded. */
  readonly first?: Readonly<Record<string, string>>;
  readonly send: (said: Said, envelope: EnvelopeSent) => Promise<T>;
  /** What is said once it is recorded. */
  readonly done: (answer: T) => ReactNode;
  readonly onDone?: (answer: T) => void;
  /** What is not safe to undo is confirmed: what it does, in words; with none, nothing is asked. */
  readonly sure?: ((said: Said) => string) | undefined;
  /** Whether the time it happened may be given; without, it is now. */
  readonly late?: boolean;
  /** Stands between the fields and the button: cautions, what the figures mean, another row. */
  readonly children?: (said: Said) => ReactNode;
}

const WHEN = 'happenedAt';

/**
 * A form that records one fact. What was typed stays until the service has recorded it; what it found wrong stands at
 * its field; sent again, it is the same fact.
 */
export const RecordForm = <T,>(props: RecordFormProps<T>) => {
  const { groups, button, first = {}, send, done, onDone, sure, late = false, children } = props;
  const { t } = useWords();
  const client = useQueryClient();
  const envelopes = useEnvelope();
  const place = useRef<HTMLDivElement>(null);
  const [asking, setAsking] = useState(false);
  /** What the service found wrong when it was sent last, and what of it was not typed in since. */
  const [found, setFound] = useState(NOTHING_WRONG);
  const [wrong, setWrong] = useState(NOTHING_WRONG);
  const toMend = useRef<string | undefined>(undefined);
  const fields = fieldsOf(groups, late ? t('entry.when') : null);
  const [put, setPut] = useState<Readonly<Record<string, string>>>({});
  const typed: Readonly<Record<string, string>> = Object.fromEntries(
    fields.map(({ name }) => [name, put[name] ?? first[name] ?? '']),
  );
  const said: Said = (name) => typed[name] ?? '';
  const sending = useMutation({
    mutationFn: () => send(said, envelopes.of(JSON.stringify(typed), said(WHEN))),
    onSuccess: (answer) => {
      envelopes.spend();
      setFound(NOTHING_WRONG);
      setWrong(NOTHING_WRONG);
      setPut({});
      onDone?.(answer);
      void client.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] !== 'session' });
    },
    onError: (error) => {
      const refused = wrongOf(fields, fieldErrors(error));
      toMend.current = Object.keys(refused.at)[0];
      setFound(refused);
      setWrong(refused);
    },
    onSettled: () => setAsking(false),
  });
  useEffect(() => {
    const name = toMend.current;
    toMend.current = undefined;
    if (name !== undefined) place.current?.querySelector<HTMLElement>(`[name="${name}"]`)?.focus();
  }, [wrong]);
  const question = sure?.(said) ?? '';
  const input = (field: EntryField) => (
    <FieldInput
      key={field.name}
      of={field}
      value={said(field.name)}
      wrong={wrong.at[field.name]}
      onChange={(value) => {
        setPut((before) => ({ ...before, [field.name]: value }));
        setWrong((before) => without(before, field.name));
      }}
    />
  );
  return (
    <div className="record-form" ref={place}>
      <Form
        onSubmit={() => (question !== '' && !asking ? setAsking(true) : sending.mutate())}
        errors={wrong.at}
        checkedBy="service"
      >
        {groups.map((group, i) => {
          const inputs = group.fields.map(input);
          return group.name === undefined ? (
            inputs
          ) : (
            <Group key={i} name={group.name}>
              {inputs}
            </Group>
          );
        })}
        {fields.filter(({ name }) => late && name === WHEN).map(input)}
        {children?.(said)}
        {asking && question !== '' ? (
          <Sure words={question} busy={sending.isPending} onBack={() => setAsking(false)} />
        ) : (
          <Button type="submit" className="btn do" busy={sending.isPending}>
            {button}
          </Button>
        )}
      </Form>
      <NotRecorded error={sending.error} wrong={found} labels={fields} />
      {sending.isSuccess ? <div role="status">{done(sending.data)}</div> : null}
    </div>
  );
};

/**
 * What is wrong with a field is forgotten as soon as it is typed in. The kit would do so when the field is left: the button that
 * a mouse is pressed on then moves away before it is let go, and nothing is sent.
 */
const without = (wrong: Wrong, name: string): Wrong =>
  name in wrong.at
    ? { ...wrong, at: Object.fromEntries(Object.entries(wrong.at).filter(([key]) => key !== name)) }
    : wrong;

const NOTHING_WRONG: Wrong = { at: {}, elsewhere: [] };

const fieldsOf = (groups: readonly FieldGroup[], when: string | null): readonly EntryField[] => [
  ...groups.flatMap((group) => group.fields),
  ...(when === null ? [] : [{ name: WHEN, label: when, kind: 'moment' as const }]),
];
