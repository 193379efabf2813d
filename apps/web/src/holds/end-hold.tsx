import type { HoldView } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { Fold } from '../ui/fold.js';
import { useWords } from '../words/use-words.js';

/** Closing a hold when every hull is disposed of, or lifting it when what was suspected is not so. */
export const EndHold = ({ hold }: { readonly hold: HoldView }) => {
  const { t } = useWords();
  const { open, found } = hold.figures;
  if (hold.ended !== null) return <p>{t('holds.overAlready')}</p>;
  const reason = [{ fields: [{ name: 'reason', label: t('record.reason'), kind: 'words' as const }] }];
  return (
    <>
      <p>{open > 0 ? t('holds.notYetClosed', { open }) : t('holds.mayClose')}</p>
      {open > 0 ? null : (
        <Allowed to="closeHold" what={t('holds.close')}>
          <RecordForm
            groups={reason}
            button={t('holds.closeDo')}
            sure={() => t('holds.closeSure')}
            send={(said, envelope) =>
              post('/api/holds/:hold/closings', { hold: hold.id }, { ...envelope, reason: said('reason') })
            }
            done={(receipt) => <Found of={receipt} words={t('holds.closedNow')} />}
          />
        </Allowed>
      )}
      {found > 0 ? (
        <p className="note soft">{t('holds.notLifted')}</p>
      ) : (
        <Fold summary={t('holds.lift')}>
          <Allowed to="liftHold" what={t('holds.lift')}>
            <RecordForm
              groups={reason}
              button={t('holds.liftDo')}
              sure={() => t('holds.liftSure')}
              send={(said, envelope) =>
                post('/api/holds/:hold/lifts', { hold: hold.id }, { ...envelope, reason: said('reason') })
              }
              done={() => <Found of={{ result: {} }} words={t('holds.liftedNow')} />}
            />
          </Allowed>
        </Fold>
      )}
    </>
  );
};
