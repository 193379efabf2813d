import { post } from '../api/ask.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { useWords } from '../words/use-words.js';
import { certificateOf } from './certificate-values.js';

/** A retest by quality gives a lot another last day of use, from then on. */
export const RetestLot = ({ lot }: { readonly lot: string }) => {
  const { t, times } = useWords();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            { name: 'expiresOn', label: t('store.newLastDay'), kind: 'day' },
            { name: 'result', label: t('store.result'), kind: 'words' },
            {
              name: 'certificate',
              label: t('store.certificateValues'),
              kind: 'lines',
              hint: t('store.certificateHint'),
            },
          ],
        },
      ]}
      button={t('store.retestDo')}
      late
      send={(said, envelope) =>
        post(
          '/api/lots/:lot/retests',
          { lot },
          {
            ...envelope,
            expiresOn: said('expiresOn'),
            result: said('result'),
            certificate: certificateOf(said('certificate')),
          },
        )
      }
      done={(receipt) => (
        <Found of={receipt} words={t('store.retested', { day: times.calendarDay(receipt.result.expiresOn) })} />
      )}
    />
  );
};
