import type { TankView } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { amountAtFirst, amountFields, amountOf } from '../entry/amount-fields.js';
import { decimal } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { useWords } from '../words/use-words.js';
import { inputFields, inputsAtFirst, inputsOf } from './input-rows.js';
import { useRows } from './use-rows.js';

/** A fill of a tank. What is in it is measured first: what differs from the book is kept as a gain or a loss. */
export const FillTank = ({ tank }: { readonly tank: TankView }) => {
  const words = useWords();
  const { t, mass } = words;
  const rows = useRows(1);
  const wasEmpty = tank.lot === null;
  const heel = {
    name: t('store.heel'),
    fields: amountFields(words, { name: 'heel', label: t('store.heelIs'), pointer: '/heel' }),
  };
  return (
    <Allowed to="fillTank" what={t('store.fill')}>
      <p>{wasEmpty ? t('store.heelNone') : t('store.heelHow', { book: mass(tank.bookKg ?? 0) })}</p>
      <RecordForm
        groups={[
          { fields: [{ name: 'code', label: t('store.fillCode'), hint: t('store.fillCodeHint') }] },
          ...(wasEmpty ? [] : [heel]),
          ...inputFields(words, rows.count),
        ]}
        first={{ ...amountAtFirst('heel'), ...inputsAtFirst(rows.count) }}
        button={t('store.recordFill')}
        late
        send={(said, envelope) =>
          post(
            '/api/tanks/:tank/fills',
            { tank: tank.code },
            {
              ...envelope,
              code: said('code'),
              heel: wasEmpty || Number(decimal(said('heel')) || NaN) === 0 ? null : amountOf(said, 'heel'),
              inputs: inputsOf(said, rows.count),
            },
          )
        }
        onDone={rows.startAnew}
        done={(receipt) => <Found of={receipt} words={t('store.filled', { lot: receipt.result.code })} />}
      >
        {() => rows.more(t('store.oneMore'))}
      </RecordForm>
    </Allowed>
  );
};
