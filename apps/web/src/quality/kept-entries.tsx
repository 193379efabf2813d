import type { KeptEntry } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { post } from '../api/ask.js';
import { keptEntriesQuery } from '../api/queries-of-quality.js';
import { Answer } from '../asked/answer.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { Empty } from '../ui/page.js';
import { Moment } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** What revoked devices sent: kept, and admitted or set aside by quality. */
export const KeptEntries = () => {
  const { t } = useWords();
  const query = useQuery(keptEntriesQuery);
  return (
    <Answer what={t('quality.theKept')} query={query}>
      {(entries) =>
        entries.length === 0 ? (
          <Empty>{t('quality.noKept')}</Empty>
        ) : (
          <ul className="plain ruled">
            {entries.map((entry) => (
              <li key={entry.id}>
                <Entry entry={entry} />
              </li>
            ))}
          </ul>
        )
      }
    </Answer>
  );
};

const Entry = ({
  entry: { id, device, enteredBy, receivedAt, path, body, decided },
}: {
  readonly entry: KeptEntry;
}) => {
  const { t } = useWords();
  return (
    <>
      <span className="n">{path}</span> {t('quality.inTheName', { badge: enteredBy ?? t('record.notKnown'), device })}{' '}
      <Moment at={receivedAt} />
      <Fold summary={t('quality.whatItSays')}>
        <pre className="n wrapped">{JSON.stringify(body, null, 1)}</pre>
      </Fold>
      {decided === null ? (
        <Fold summary={t('quality.admitOrNot')}>
          <RecordForm
            groups={[
              {
                fields: [
                  {
                    name: 'admitted',
                    label: t('quality.admitOrNot'),
                    kind: 'choice',
                    options: [
                      ['yes', t('quality.admit')],
                      ['no', t('quality.setAside')],
                    ],
                  },
                  { name: 'reason', label: t('record.reason'), kind: 'words' },
                ],
              },
            ]}
            button={t('quality.recordDecision')}
            sure={() => t('quality.admitSure')}
            send={(said, envelope) =>
              post(
                '/api/kept-entries/:entry/decisions',
                { entry: id },
                {
                  ...envelope,
                  admitted: (said('admitted') === '' ? undefined : said('admitted') === 'yes') as boolean,
                  reason: said('reason'),
                },
              )
            }
            done={() => <p>{mark('made', t('quality.saidSo'))}</p>}
          />
        </Fold>
      ) : (
        mark(
          'made',
          <>
            {decided.admitted ? t('quality.admitted') : t('quality.aside')} {decided.by}, <Moment at={decided.at} />:{' '}
            <Said text={decided.reason} />
          </>,
        )
      )}
    </>
  );
};
