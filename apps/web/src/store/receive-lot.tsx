import { useState, type ReactNode } from 'react';
import { post } from '../api/ask.js';
import type { GetAnswer } from '../api/contract.js';
import { amountAtFirst, amountFields, amountOf } from '../entry/amount-fields.js';
import { given, type EntryField } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { useWords } from '../words/use-words.js';
import { certificateOf } from './certificate-values.js';

type Material = GetAnswer<'/api/materials'>[number];

/** A lot that was received, as the steps after it need it. */
export interface Received {
  readonly code: string;
  readonly amount: ReturnType<typeof amountOf>;
  readonly words: ReactNode;
}

interface ReceiveLotProps {
  readonly materials: readonly Material[];
  readonly onReceived: (received: Received) => void;
}

/** The form for one lot from a supplier. It comes in quarantined: whoever releases it looked at its certificate. */
export const ReceiveLot = ({ materials, onReceived }: ReceiveLotProps) => {
  const words = useWords();
  const { t } = words;
  const [amount, setAmount] = useState<ReturnType<typeof amountOf> | null>(null);
  const fields: readonly EntryField[] = [
    {
      name: 'material',
      label: t('record.material'),
      kind: 'choice',
      options: materials.map(({ code, name }) => [code, `${name} (${code})`]),
    },
    { name: 'supplier', label: t('record.supplier') },
    { name: 'supplierLot', label: t('record.supplierLot'), hint: t('store.asOnLabel') },
    { name: 'code', label: t('store.ourCode'), hint: t('store.ourCodeHint') },
  ];
  return (
    <RecordForm
      groups={[
        { fields },
        {
          name: t('record.amount'),
          fields: amountFields(words, { name: 'amount', label: t('store.howMuch'), pointer: '/amount' }),
        },
        { name: t('store.dates'), fields: datesOf(t) },
        { name: t('store.certificate'), fields: [certificateField(t)] },
      ]}
      first={{ ...amountAtFirst('amount'), state: 'quarantined' }}
      button={t('store.receiveDo')}
      late
      send={(said, envelope) => {
        const of = amountOf(said, 'amount');
        setAmount(of);
        return post(
          '/api/lots',
          {},
          {
            ...envelope,
            code: said('code'),
            material: said('material'),
            supplier: said('supplier'),
            supplierLot: said('supplierLot'),
            amount: of,
            ...given('madeOn', said('madeOn')),
            ...given('expiresOn', said('expiresOn')),
            certificate: certificateOf(said('certificate')),
            state: 'quarantined' as const,
          },
        );
      }}
      onDone={(receipt) =>
        onReceived({
          code: receipt.result.code,
          amount: amount ?? { quantity: String(receipt.result.kg), unit: 'kg', basis: 'weighed' },
          words: <Found of={receipt} words={t('store.receivedLot', { lot: receipt.result.code })} />,
        })
      }
      done={() => null}
    />
  );
};

const datesOf = (t: ReturnType<typeof useWords>['t']): readonly EntryField[] => [
  { name: 'madeOn', label: t('store.madeOn'), kind: 'day' },
  { name: 'expiresOn', label: t('store.lastDay'), kind: 'day', hint: t('store.lastDayHint') },
];

const certificateField = (t: ReturnType<typeof useWords>['t']): EntryField => ({
  name: 'certificate',
  label: t('store.certificateValues'),
  kind: 'lines',
  hint: t('store.certificateHint'),
});
