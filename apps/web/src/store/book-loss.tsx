import { post } from '../api/ask.js';
import { amountAtFirst, amountFields, amountOf } from '../entry/amount-fields.js';
import { given } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { useWords } from '../words/use-words.js';

const LOSSES = ['scrapped', 'purged', 'line flushed', 'spilled', 'sample retained', 'returned to supplier'] as const;

/** Material that was lost to use: scrapped, purged, flushed, spilled, kept as a sample, sent back. */
export const BookLoss = ({ lot }: { readonly lot: string }) => {
  const words = useWords();
  const { t, term, mass } = words;
  return (
    <>
      <p className="caution">{t('store.lossCaution')}</p>
      <RecordForm
        groups={[
          {
            fields: [
              {
                name: 'what',
                label: t('record.what'),
                kind: 'choice',
                options: LOSSES.map((what) => [what, term(what)]),
              },
              ...amountFields(words, { name: 'amount', label: t('store.howMuch'), pointer: '/amount' }),
              { name: 'reason', label: t('record.reason'), kind: 'words' },
              { name: 'container', label: t('store.onlyContainer'), hint: t('store.onlyContainerHint') },
              { name: 'place', label: t('store.samplePlace') },
            ],
          },
        ]}
        first={amountAtFirst('amount')}
        button={t('store.loseDo')}
        late
        send={(said, envelope) =>
          post(
            '/api/lots/:lot/losses',
            { lot },
            {
              ...envelope,
              what: said('what') as (typeof LOSSES)[number],
              amount: amountOf(said, 'amount'),
              reason: said('reason'),
              ...given('container', said('container')),
              ...given('place', said('place')),
            },
          )
        }
        done={({ result: { what, kg } }) => (
          <p>{mark('made', t('store.lostNow', { what: term(what), kg: mass(kg) }))}</p>
        )}
      />
    </>
  );
};
