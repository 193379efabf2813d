import type { UnprovedEntry } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { post } from '../api/ask.js';
import { sessionQuery } from '../api/queries.js';
import { unprovedQuery } from '../api/queries-of-quality.js';
import { Answer } from '../asked/answer.js';
import { given } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { Empty } from '../ui/page.js';
import { Moment } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** What devices sent in the name of somebody who gave no PIN. It waits for the word of that person alone. */
export const UnprovedEntries = () => {
  const { t } = useWords();
  const query = useQuery(unprovedQuery);
  const { data } = useQuery(sessionQuery);
  return (
    <Answer what={t('quality.theUnproved')} query={query}>
      {(entries) =>
        entries.length === 0 ? (
          <Empty>{t('quality.noUnproved')}</Empty>
        ) : (
          <ul className="plain ruled">
            {entries.map((entry) => (
              <li key={entry.id}>
                <Entry entry={entry} own={entry.enteredBy.toLowerCase() === data?.person?.badge.toLowerCase()} />
              </li>
            ))}
          </ul>
        )
      }
    </Answer>
  );
};

const Entry = ({ entry, own }: { readonly entry: UnprovedEntry; readonly own: boolean }) => {
  const { t } = useWords();
  const { id, kind, enteredBy, device, at, parts, refused } = entry;
  return (
    <>
      <b>
        <Said text={kind} />
      </b>{' '}
      <span className="n">{parts.join(', ')}</span> {t('quality.inTheName', { badge: enteredBy, device })}{' '}
      <Moment at={at} /> {refused === null ? null : mark('outside', <Said text={refused} />)}
      {own ? (
        <Fold summary={t('quality.isItYours')}>
          <RecordForm
            groups={[
              {
                fields: [
                  {
                    name: 'confirmed',
                    label: t('quality.isItYours'),
                    kind: 'choice',
                    options: [
                      ['yes', t('quality.mine')],
                      ['no', t('quality.notMine')],
                    ],
                  },
                  { name: 'reason', label: t('record.reason'), kind: 'words', hint: t('quality.whyNotMine') },
                ],
              },
            ]}
            button={t('quality.recordWord')}
            send={(said, envelope) =>
              post(
                '/api/unproved-entries/:entry/confirmations',
                { entry: id },
                {
                  ...envelope,
                  confirmed: (said('confirmed') === '' ? undefined : said('confirmed') === 'yes') as boolean,
                  ...given('reason', said('reason')),
                },
              )
            }
            done={() => <p>{mark('made', t('quality.saidSo'))}</p>}
          />
        </Fold>
      ) : (
        <span className="note soft"> {t('quality.onlyThey', { badge: enteredBy })}</span>
      )}
    </>
  );
};
