import type { UnprovedEntry } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { unprovedQuery } from '../api/queries-of-station.js';
import { Answer } from '../asked/answer.js';
import { queueEntry } from '../outbox/queue-entry.js';
import { Acts, StationPage } from '../station-frame/station-page.js';
import { useHolder } from '../station-frame/use-holder.js';
import { useKeep } from '../station-frame/use-keep.js';
import { Button } from '../ui/button.js';
import { Empty } from '../ui/page.js';
import { TextField } from '../ui/text-field.js';
import { Moment } from '../words/moments.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

const FIELDS = { reason: 'reason' } as const;

/** What tablets sent in one's name without a PIN: each is confirmed or refused by who is said to have made it. */
export const ConfirmPage = () => {
  const { t } = useWords();
  const holder = useHolder();
  const query = useQuery(unprovedQuery);
  const [done, setDone] = useState<ReadonlySet<string>>(new Set());
  return (
    <StationPage title={t('confirm.title')} name={t('confirm.title')}>
      {holder?.proved === false ? <p className="caution">{t('confirm.needsPin')}</p> : null}
      <Answer what={t('confirm.entries')} query={query}>
        {(entries) => {
          const own = entries.filter(
            ({ id, enteredBy, refused }) => enteredBy === holder?.badge && refused === null && !done.has(id),
          );
          if (own.length === 0) return <Empty>{t('confirm.nothing')}</Empty>;
          return (
            <ul className="st-list">
              {own.map((entry) => (
                <li key={entry.id}>
                  <Entry entry={entry} onDone={() => setDone((before) => new Set([...before, entry.id]))} />
                </li>
              ))}
            </ul>
          );
        }}
      </Answer>
    </StationPage>
  );
};

const Entry = ({ entry, onDone }: { readonly entry: UnprovedEntry; readonly onDone: () => void }) => {
  const { t } = useWords();
  const [reason, setReason] = useState<string | null>(null);
  const { keep, busy, note } = useKeep();
  const say = async (confirmed: boolean): Promise<void> => {
    const about = entry.parts.join(', ') || entry.kind;
    const why = reason?.trim() ?? '';
    const body = confirmed ? { confirmed } : { confirmed, reason: why };
    const options = { lanes: entry.parts.length > 0 ? entry.parts : [entry.id], about, detail: entry.kind };
    const send = () => queueEntry('/api/unproved-entries/:entry/confirmations', { entry: entry.id }, body, options);
    if (await keep(send)) onDone();
  };
  return (
    <>
      <p>
        <b>
          <Said text={entry.kind} />
        </b>{' '}
        <span className="n">{entry.parts.join(', ')}</span>
      </p>
      <p className="soft">
        <Text of="confirm.at" with={{ at: <Moment at={entry.at} />, device: entry.device }} />
      </p>
      {reason === null ? null : (
        <TextField name={FIELDS.reason} label={t('confirm.why')} value={reason} onChange={setReason} kind="text" />
      )}
      <Acts>
        {reason === null ? (
          <Button className="btn do" busy={busy} onPress={() => void say(true)}>
            {t('confirm.mine')}
          </Button>
        ) : null}
        <Button busy={busy} onPress={() => (reason === null ? setReason('') : reason.trim() && void say(false))}>
          {t('confirm.notMine')}
        </Button>
      </Acts>
      {note}
    </>
  );
};
