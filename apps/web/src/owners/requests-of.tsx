import type { OwnerDetail, OwnerFile } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { given } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { Fold } from '../ui/fold.js';
import { Section } from '../ui/page.js';
import { CalendarDay } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

type Of = { readonly of: OwnerFile };

const ASKED = {
  access: 'owners.askAccess',
  correction: 'owners.askCorrection',
  erasure: 'owners.askErasure',
} as const;
type Asked = keyof typeof ASKED;

/** What the person asked for, and by when it is to be answered. */
export const RequestsOf = ({ of: { id, requests } }: Of) => {
  const { t } = useWords();
  return (
    <Section name={t('owners.requests')}>
      {requests.length === 0 ? <p className="soft">{t('owners.noRequests')}</p> : null}
      <ul className="plain">
        {requests.map(({ asked, askedOn, answerBy }, i) => (
          <li key={`${askedOn} ${i}`}>
            <CalendarDay at={askedOn} /> {t(ASKED[asked])}. {t('owners.answerBy')} <CalendarDay at={answerBy} />
          </li>
        ))}
      </ul>
      <p className="soft">{t('owners.answerIs')}</p>
      <Allowed to="recordOwnerRequest" what={t('owners.recordRequest')}>
        <Fold summary={t('owners.recordRequest')}>
          <RecordForm
            groups={[
              {
                fields: [
                  {
                    ...{ name: 'asked', label: t('owners.asked'), kind: 'choice', none: t('owners.choose') },
                    options: (Object.keys(ASKED) as Asked[]).map((asked) => [asked, t(ASKED[asked])] as const),
                  },
                  { name: 'askedOn', label: t('owners.askedOn'), kind: 'day' },
                ],
              },
            ]}
            button={t('owners.recordRequest')}
            send={(said, envelope) =>
              post(
                '/api/owners/:owner/requests',
                { owner: id },
                { ...envelope, asked: said('asked') as Asked, askedOn: said('askedOn') },
              )
            }
            done={() => <p>{t('owners.requestRecorded')}</p>}
          />
        </Fold>
      </Allowed>
    </Section>
  );
};

/** Sets what is kept right: all of it as it shall be. */
export const CorrectIt = ({ of: { id }, detail }: Of & { readonly detail: OwnerDetail }) => {
  const { t } = useWords();
  const field = (name: 'name' | 'address' | 'email' | 'phone') => ({
    name,
    label: t(`owners.${name}`),
    pointer: `/owner/${name}`,
  });
  const { name, address = '', email = '', phone = '' } = detail;
  return (
    <Allowed to="correctOwner" what={t('owners.correct')}>
      <Fold summary={t('owners.correct')}>
        <p>{t('owners.correctIs')}</p>
        <RecordForm
          groups={[
            { fields: [field('name'), field('address'), field('email'), field('phone')] },
            { fields: [{ name: 'reason', label: t('record.reason'), hint: t('owners.noNames'), kind: 'words' }] },
          ]}
          first={{ name, address, email, phone }}
          button={t('owners.correct')}
          send={(said, envelope) => {
            const owner = {
              ...{ name: said('name') },
              ...given('address', said('address')),
              ...given('email', said('email')),
              ...given('phone', said('phone')),
            };
            return post(
              '/api/owners/:owner/corrections',
              { owner: id },
              { ...envelope, owner, reason: said('reason') },
            );
          }}
          done={() => <p>{t('owners.corrected')}</p>}
        />
      </Fold>
    </Allowed>
  );
};

/** Erases it, or says what keeps it and narrows it. */
export const EraseIt = ({ of: { id, keptBecause } }: Of) => {
  const { t } = useWords();
  return (
    <Allowed to="eraseOwner" what={t('owners.erase')}>
      <Fold summary={t('owners.erase')}>
        <p>{t(keptBecause === null ? 'owners.eraseIs' : 'owners.narrowIs')}</p>
        <RecordForm
          groups={[
            { fields: [{ name: 'reason', label: t('record.reason'), hint: t('owners.noNames'), kind: 'words' }] },
          ]}
          button={t(keptBecause === null ? 'owners.erase' : 'owners.narrow')}
          sure={() => t('owners.sure')}
          send={(said, envelope) =>
            post('/api/owners/:owner/erasures', { owner: id }, { ...envelope, reason: said('reason') })
          }
          done={({ result: { erased, narrowed, keptBecause: because } }) => (
            <p>
              {erased ? t('owners.isErasedNow') : t('owners.isNarrowedNow', { fields: narrowed.join(', ') })}{' '}
              {because === null ? null : <Said text={because} />}
            </p>
          )}
        />
      </Fold>
    </Allowed>
  );
};
