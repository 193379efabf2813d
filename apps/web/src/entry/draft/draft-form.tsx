import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef, useState, type ReactNode } from 'react';
import { fieldErrors, Refused, type FieldError } from '../../api/problem.js';
import { valueAt, withValueAt } from '../../outbox/at-pointer.js';
import { Button } from '../../ui/button.js';
import { Form } from '../../ui/form.js';
import { wrongOf, type Wrong } from '../entry-field.js';
import { NotRecorded } from '../not-recorded.js';
import { Sure } from '../sure.js';
import { useEnvelope, type EnvelopeSent } from '../use-envelope.js';
import { DraftContext, type DraftFields } from './draft-context.js';
import { nodesOf } from './draft-nodes.js';
import type { Draft } from './use-draft.js';

interface DraftFormProps<D, T> {
  readonly draft: Draft<D>;
  readonly button: string;
  /** The words for a place in the draft; undefined where the draft keeps what is not sent. */
  readonly labelOf: (pointer: string) => string | undefined;
  /** What stands before that label where it is said elsewhere, such as the layer that a field is of. */
  readonly whereOf: (pointer: string) => string;
  /** What is wrong before it is sent: figures that are none, fields that are empty. */
  readonly check: (draft: D) => readonly FieldError[];
  readonly send: (draft: D, envelope: EnvelopeSent) => Promise<T>;
  readonly onDone: (answer: T) => void;
  /** Something is wrong there: the page shows that field. */
  readonly onWrong?: (pointer: string) => void;
  /** What is not safe to undo is confirmed. */
  readonly sure?: (draft: D) => string;
  readonly children: ReactNode;
}

/**
 * A form for something long that is one fact, such as a laminate schedule. What is entered is kept on this device until
 * the service has recorded it. Its fields have the pointers of what is sent, so that what is wrong stands at its field.
 */
export const DraftForm = <D, T>(props: DraftFormProps<D, T>) => {
  const { draft, button, labelOf, whereOf, check, send, onDone, onWrong, sure, children } = props;
  const client = useQueryClient();
  const envelopes = useEnvelope();
  const place = useRef<HTMLDivElement>(null);
  const [asking, setAsking] = useState(false);
  const [wrong, setWrong] = useState(NOTHING_WRONG);
  const [focusOn, setFocusOn] = useState<{ readonly pointer: string } | null>(null);
  const nodes = nodesOf(draft.value, (pointer) => {
    const label = labelOf(pointer);
    return label === undefined ? undefined : `${whereOf(pointer)}${label}`;
  });
  const readAnew = () => client.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] !== 'session' });
  const found = (error: Error): void => {
    const now = wrongOf(nodes, fieldErrors(error));
    const first = nodes.find(({ name }) => now.at[name] !== undefined)?.name;
    setWrong(now);
    // Somebody else was there before: the page is to show what is there now.
    if (error instanceof Refused && error.status === 409) void readAnew();
    if (first === undefined) return;
    onWrong?.(first);
    setFocusOn({ pointer: first });
  };
  const sending = useMutation({
    mutationFn: async () => {
      assertRight(check(draft.value));
      return send(draft.value, envelopes.of(JSON.stringify(draft.value), ''));
    },
    onSuccess: async (answer) => {
      envelopes.spend();
      await readAnew();
      draft.drop();
      onDone(answer);
    },
    onError: found,
    onSettled: () => setAsking(false),
  });
  useEffect(() => {
    if (focusOn !== null) place.current?.querySelector<HTMLElement>(`[name="${CSS.escape(focusOn.pointer)}"]`)?.focus();
  }, [focusOn]);
  const fields: DraftFields = {
    at: (pointer) => valueAt(draft.value, pointer),
    put: (pointer, value) => {
      // Where rows came or went, what was found wrong no longer stands where it was found.
      setWrong((before) => (typeof value === 'string' ? without(before, pointer) : NOTHING_WRONG));
      setAsking(false);
      draft.set(withValueAt(draft.value, pointer, value) as D);
    },
    wrongAt: (pointer) => wrong.at[pointer],
    wrongBelow: (pointer) => Object.keys(wrong.at).filter((name) => `${name}/`.startsWith(`${pointer}/`)).length,
    labelOf,
  };
  const submit = (): void => {
    const errors = check(draft.value);
    if (sure !== undefined && errors.length === 0 && !asking) setAsking(true);
    else sending.mutate();
  };
  return (
    <DraftContext value={fields}>
      <div className="record-form draft-form" ref={place}>
        <Form onSubmit={submit} errors={wrong.at} checkedBy="service">
          {children}
          {asking && sure !== undefined ? (
            <Sure words={sure(draft.value)} busy={sending.isPending} onBack={() => setAsking(false)} />
          ) : (
            <Button type="submit" className="btn do" busy={sending.isPending}>
              {button}
            </Button>
          )}
        </Form>
        <NotRecorded error={sending.error} wrong={wrong} labels={nodes} isOwn={sending.error instanceof NotRight} />
      </div>
    </DraftContext>
  );
};

const NOTHING_WRONG: Wrong = { at: {}, elsewhere: [] };

const without = ({ at, elsewhere }: Wrong, pointer: string): Wrong => ({
  at: Object.fromEntries(Object.entries(at).filter(([name]) => name !== pointer)),
  elsewhere,
});

/** What the page itself finds wrong stands where what the service finds wrong does. */
class NotRight extends Refused {}

const assertRight = (errors: readonly FieldError[]): void => {
  if (errors.length === 0) return;
  throw new NotRight(400, { type: '', title: '', status: 400, detail: '', errors: [...errors] });
};
