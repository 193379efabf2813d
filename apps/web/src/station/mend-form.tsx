import { useState } from 'react';
import { valueAt, withValueAt } from '../outbox/at-pointer.js';
import type { Entry } from '../outbox/entry.js';
import { Acts } from '../station-frame/station-page.js';
import { Button } from '../ui/button.js';
import { Form } from '../ui/form.js';
import { TextField } from '../ui/text-field.js';
import { useWords } from '../words/use-words.js';

interface MendFormProps {
  readonly entry: Entry;
  readonly onMend: (body: Readonly<Record<string, unknown>>) => Promise<void>;
  readonly onBack: () => void;
}

/** Fields for what the service named as wrong, as it was entered; with none, the entry can go again as it is. */
export const MendForm = ({ entry: { body, problem }, onMend, onBack }: MendFormProps) => {
  const { t } = useWords();
  const wrong = (problem?.errors ?? []).filter(
    ({ pointer }) => isPlain(valueAt(body, pointer)) && valueAt(body, pointer.replace(/\/[^/]*$/, '')) !== undefined,
  );
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const asEntered = (pointer: string): string => String(valueAt(body, pointer) ?? '');
  const mended = (): Readonly<Record<string, unknown>> =>
    wrong.reduce<unknown>((at, { pointer }) => {
      const text = typed[pointer] ?? asEntered(pointer);
      const value = typeof valueAt(body, pointer) === 'number' ? Number(text) : text;
      return withValueAt(at, pointer, value);
    }, body) as Readonly<Record<string, unknown>>;
  return (
    <Form onSubmit={() => void onMend(mended())}>
      {wrong.map(({ pointer, detail }) => (
        <TextField
          key={pointer}
          name={pointer}
          label={pointer.slice(1).replaceAll('/', ' ')}
          hint={detail}
          kind="text"
          value={typed[pointer] ?? asEntered(pointer)}
          onChange={(value) => setTyped((before) => ({ ...before, [pointer]: value }))}
        />
      ))}
      <Acts>
        <Button type="submit" className="btn do">
          {t(wrong.length > 0 ? 'outbox.mended' : 'outbox.asItIs')}
        </Button>
        <Button onPress={onBack}>{t('outbox.back')}</Button>
      </Acts>
    </Form>
  );
};

const isPlain = (value: unknown): boolean => value === undefined || ['string', 'number'].includes(typeof value);
