import { useState } from 'react';
import { clock } from '../device/clock.js';
import { drain } from '../outbox/drain.js';
import type { Entry } from '../outbox/entry.js';
import { kindOfEntry } from '../outbox/entry-words.js';
import { mendEntry, setAside } from '../outbox/kept-entries.js';
import { waitingBehind } from '../outbox/next-to-send.js';
import { outboxStore } from '../outbox/outbox-store.js';
import { Acts } from '../station-frame/station-page.js';
import { useHolder } from '../station-frame/use-holder.js';
import { Button } from '../ui/button.js';
import { Form } from '../ui/form.js';
import { TextField } from '../ui/text-field.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { MendForm } from './mend-form.js';

interface RefusedEntryProps {
  readonly entry: Entry;
  readonly all: readonly Entry[];
}

const FIELDS = { reason: 'reason' } as const;

/** An entry that the service refused: why, what waits behind it, and the two ways on. */
export const RefusedEntry = ({ entry, all }: RefusedEntryProps) => {
  const { t } = useWords();
  const [doing, setDoing] = useState<'mend' | 'aside' | null>(null);
  const behind = waitingBehind(all, entry);
  const send = async (body: Readonly<Record<string, unknown>>): Promise<void> => {
    await mendEntry(entry.id, body);
    await outboxStore.changed();
    await drain();
  };
  return (
    <div className="st-refused">
      <p>
        <b>{t(kindOfEntry(entry.path))}</b> <span className="n">{entry.about}</span> {entry.detail}
      </p>
      <p className="wrong">
        <Text of="outbox.why" with={{ why: <Why entry={entry} /> }} />
      </p>
      {behind > 0 ? <p>{t('outbox.behind', { count: behind })}</p> : null}
      {doing === 'mend' ? <MendForm entry={entry} onMend={send} onBack={() => setDoing(null)} /> : null}
      {doing === 'aside' ? <SetAside entry={entry} onBack={() => setDoing(null)} /> : null}
      {doing === null ? (
        <Acts>
          <Button className="btn do" onPress={() => setDoing('mend')}>
            {t('outbox.mend')}
          </Button>
          <Button onPress={() => setDoing('aside')}>{t('outbox.setAside')}</Button>
        </Acts>
      ) : null}
    </div>
  );
};

const Why = ({ entry: { problem } }: { readonly entry: Entry }) => {
  const { t } = useWords();
  if (problem === null || problem.type === 'not-made') return t('outbox.notMade');
  const said = problem.errors.length > 0 ? problem.errors.map(({ detail }) => detail).join('; ') : problem.detail;
  return <Said text={said} />;
};

const SetAside = ({ entry, onBack }: { readonly entry: Entry; readonly onBack: () => void }) => {
  const { t } = useWords();
  const holder = useHolder();
  const [reason, setReason] = useState('');
  const put = async (): Promise<void> => {
    if (reason.trim() === '') return;
    await setAside(entry.id, { reason: reason.trim(), by: holder?.badge ?? '', at: clock.instant() });
    await outboxStore.changed();
    await drain();
  };
  return (
    <Form onSubmit={() => void put()}>
      <p>{t('outbox.setAsideHow')}</p>
      <TextField name={FIELDS.reason} label={t('outbox.reason')} value={reason} onChange={setReason} kind="lines" />
      <Acts>
        <Button type="submit" className="btn do">
          {t('outbox.setAsideDo')}
        </Button>
        <Button onPress={onBack}>{t('outbox.back')}</Button>
      </Acts>
    </Form>
  );
};
