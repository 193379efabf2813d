import type { UnitCode } from '@hull-record/trade';
import { post } from '../api/ask.js';
import { AMOUNT_UNITS } from '../entry/amount-fields.js';
import { decimal, given } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { unitSign } from '../words/figures.js';
import { useWords } from '../words/use-words.js';

interface CountLotProps {
  readonly lot: string;
  readonly leftKg: number;
}

/** What was really there when somebody counted, gauged or weighed it; the difference to the book is kept. */
export const CountLot = ({ lot, leftKg }: CountLotProps) => {
  const { t, mass } = useWords();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            {
              name: 'quantity',
              label: t('store.counted'),
              kind: 'decimal',
              hint: t('store.bookSays', { left: mass(leftKg) }),
            },
            {
              name: 'unit',
              label: t('entry.unit'),
              kind: 'choice',
              options: AMOUNT_UNITS.map((unit) => [unit, unitSign(unit)]),
            },
            { name: 'container', label: t('store.onlyContainer'), hint: t('store.onlyContainerHint') },
            { name: 'note', label: t('record.note'), kind: 'words' },
          ],
        },
      ]}
      first={{ unit: 'kg' }}
      button={t('store.countDo')}
      late
      send={(said, envelope) =>
        post(
          '/api/lots/:lot/counts',
          { lot },
          {
            ...envelope,
            quantity: decimal(said('quantity')),
            unit: said('unit') as UnitCode,
            ...given('container', said('container')),
            ...given('note', said('note')),
          },
        )
      }
      done={({ result: { kg, differenceKg } }) => (
        <p>
          {mark(
            'made',
            differenceKg === null
              ? t('store.countedOne', { kg: mass(kg) })
              : t('store.countedNow', { kg: mass(kg), difference: mass(differenceKg) }),
          )}
        </p>
      )}
    />
  );
};
