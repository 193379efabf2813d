import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { amountAtFirst, amountFields, amountOf } from '../entry/amount-fields.js';
import { given } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { useWords } from '../words/use-words.js';

const CARE = ['cleaned', 'sealed', 'waxed', 'release applied', 'sanded', 'buffed', 'inspected', 'reworked'] as const;

/** Records care of a mold, with the lot of release or cleaner. A rework begins a new state of it. */
export const CareForMold = ({ mold }: { readonly mold: string }) => {
  const words = useWords();
  const { t, term } = words;
  return (
    <Allowed to="careForMold" what={t('molds.care')}>
      <p className="caution">{t('molds.caution')}</p>
      <RecordForm
        groups={[
          {
            fields: [
              {
                name: 'what',
                label: t('record.what'),
                kind: 'choice',
                options: CARE.map((what) => [what, term(what)]),
              },
              { name: 'doneBy', label: t('molds.doneBy'), hint: t('quality.doneByHint') },
              { name: 'duePulls', label: t('molds.duePulls'), kind: 'decimal' },
              { name: 'dueOn', label: t('molds.dueOn'), kind: 'day' },
              { name: 'note', label: t('record.note'), kind: 'words' },
            ],
          },
          {
            name: t('molds.used'),
            fields: [
              { name: 'lot', label: t('record.lot'), pointer: '/used/0' },
              ...amountFields(words, { name: 'amount', label: t('record.amount'), pointer: '/used/0/amount' }),
            ],
          },
        ]}
        first={amountAtFirst('amount')}
        button={t('molds.recordCare')}
        late
        sure={(said) => (said('what') === 'reworked' ? t('molds.reworkSure', { mold }) : '')}
        send={(said, envelope) =>
          post(
            '/api/molds/:mold/care',
            { mold },
            {
              ...envelope,
              what: said('what') as (typeof CARE)[number],
              doneBy: said('doneBy')
                .split(',')
                .map((badge) => badge.trim())
                .filter((badge) => badge !== ''),
              used: said('lot').trim() === '' ? [] : [{ lot: said('lot').trim(), amount: amountOf(said, 'amount') }],
              ...(said('duePulls') === '' ? {} : { duePulls: Number(said('duePulls')) }),
              ...given('dueOn', said('dueOn')),
              ...given('note', said('note')),
            },
          )
        }
        done={(receipt) => <Found of={receipt} words={t('molds.cared', { what: term(receipt.result.what) })} />}
      />
    </Allowed>
  );
};
