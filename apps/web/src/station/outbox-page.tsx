import { useQuery } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { drain } from '../outbox/drain.js';
import type { Entry, Sent } from '../outbox/entry.js';
import { kindOfEntry } from '../outbox/entry-words.js';
import { sentLast } from '../outbox/kept-entries.js';
import { useOutbox } from '../outbox/use-outbox.js';
import { StationPage } from '../station-frame/station-page.js';
import { Button } from '../ui/button.js';
import { Section } from '../ui/page.js';
import { Moment } from '../words/moments.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { RefusedEntry } from './refused-entry.js';

/** So many of those sent last are shown. */
const SHOWN = 20;

/** Everything that this tablet wrote and the service does not have, and what it sent last. */
export const OutboxPage = () => {
  const { t } = useWords();
  const { all, waiting, refused, aside, sent } = useOutbox();
  const { data: last = [] } = useQuery({ queryKey: ['sent last', sent], queryFn: () => sentLast(SHOWN) });
  return (
    <StationPage title={t('outbox.title')} name={t('outbox.title')}>
      {waiting.length + refused.length === 0 ? <p className="st-say">{t('outbox.nothing')}</p> : null}
      <List name={t('outbox.refusedHead')} of={refused}>
        {(entry) => <RefusedEntry entry={entry} all={all} />}
      </List>
      <List name={t('outbox.waitingHead')} of={waiting}>
        {(entry) => <EntryWords entry={entry} />}
      </List>
      {waiting.length > 0 ? (
        <Button className="btn" onPress={() => void drain().catch(() => undefined)}>
          {t('outbox.sendNow')}
        </Button>
      ) : null}
      <List name={t('outbox.asideHead')} of={aside}>
        {(entry) => <AsideWords entry={entry} />}
      </List>
      <List name={t('outbox.sentHead')} of={last}>
        {(entry) => <SentWords of={entry} />}
      </List>
    </StationPage>
  );
};

interface ListProps<T> {
  readonly name: string;
  readonly of: readonly T[];
  readonly children: (each: T) => ReactNode;
}

const List = <T extends { readonly id: string }>({ name, of, children }: ListProps<T>) =>
  of.length === 0 ? null : (
    <Section name={name}>
      <ul className="st-list">
        {of.map((each) => (
          <li key={each.id}>{children(each)}</li>
        ))}
      </ul>
    </Section>
  );

const EntryWords = ({ entry: { path, about, detail, body } }: { readonly entry: Entry }) => {
  const { t } = useWords();
  return (
    <>
      <p>
        <b>{t(kindOfEntry(path))}</b> <span className="n">{about}</span> {detail}
      </p>
      <p className="soft">
        <Text of="outbox.by" with={{ by: body.enteredBy, at: <Moment at={body.happenedAt} /> }} />
      </p>
    </>
  );
};

const AsideWords = ({ entry }: { readonly entry: Entry }) => (
  <>
    <EntryWords entry={entry} />
    {entry.aside === null ? null : (
      <p>
        <Text
          of="outbox.asideWhy"
          with={{
            by: entry.aside.by,
            at: <Moment at={entry.aside.at} />,
            reason: <Said text={entry.aside.reason} />,
          }}
        />
      </p>
    )}
  </>
);

const SentWords = ({ of: { path, about, detail } }: { readonly of: Sent }) => {
  const { t } = useWords();
  return (
    <p>
      <b>{t(kindOfEntry(path))}</b> <span className="n">{about}</span> {detail}
    </p>
  );
};
