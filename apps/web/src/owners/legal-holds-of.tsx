import type { OwnerFile } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { RecordForm } from '../entry/record-form.js';
import { Fold } from '../ui/fold.js';
import { Section } from '../ui/page.js';
import { Day } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** Legal holds on the data of the hull: while one lasts, nothing personal of it is erased. */
export const LegalHoldsOf = ({ of: { hull, holds } }: { readonly of: OwnerFile }) => {
  const { t } = useWords();
  const why = { name: 'reason', label: t('record.reason'), hint: t('owners.noNames'), kind: 'words' } as const;
  return (
    <Section name={t('owners.legalHolds')}>
      <p className="soft">{t('owners.legalHoldIs')}</p>
      <ul className="plain">
        {holds.map(({ id, reason, since }) => (
          <li key={id}>
            <Day at={since} /> <Said text={reason} />
            <Allowed to="endLegalHold" what={t('owners.endHold')}>
              <Fold summary={t('owners.endHold')}>
                <RecordForm
                  groups={[{ fields: [why] }]}
                  button={t('owners.endHold')}
                  sure={() => t('owners.sureEnd')}
                  send={(said, envelope) =>
                    post('/api/legal-holds/:hold/endings', { hold: id }, { ...envelope, reason: said('reason') })
                  }
                  done={() => <p>{t('owners.holdEnded')}</p>}
                />
              </Fold>
            </Allowed>
          </li>
        ))}
      </ul>
      <Allowed to="placeLegalHold" what={t('owners.placeHold')}>
        <Fold summary={t('owners.placeHold')}>
          <RecordForm
            groups={[{ fields: [why] }]}
            button={t('owners.placeHold')}
            send={(said, envelope) =>
              post('/api/hulls/:number/legal-holds', { number: hull }, { ...envelope, reason: said('reason') })
            }
            done={() => <p>{t('owners.holdPlaced')}</p>}
          />
        </Fold>
      </Allowed>
    </Section>
  );
};
