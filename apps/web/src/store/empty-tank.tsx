import type { TankView } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { given } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { useWords } from '../words/use-words.js';

/** A tank that was emptied: what the book still has in it is lost, so it is asked once more. */
export const EmptyTank = ({ tank }: { readonly tank: TankView }) => {
  const { t, mass } = useWords();
  return (
    <Allowed to="emptyTank" what={t('store.emptyIt')}>
      <p className="caution">{t('store.emptyCaution')}</p>
      <RecordForm
        groups={[
          {
            fields: [
              { name: 'cleaned', label: t('store.cleaned'), kind: 'tick' },
              { name: 'note', label: t('record.note'), kind: 'words' },
            ],
          },
        ]}
        button={t('store.recordEmptied')}
        late
        sure={() => t('store.emptySure', { tank: tank.code, book: mass(tank.bookKg ?? 0) })}
        send={(said, envelope) =>
          post(
            '/api/tanks/:tank/emptyings',
            { tank: tank.code },
            { ...envelope, cleaned: said('cleaned') === 'yes', ...given('note', said('note')) },
          )
        }
        done={(receipt) => <Found of={receipt} words={t('store.emptied', { tank: tank.code })} />}
      />
    </Allowed>
  );
};
