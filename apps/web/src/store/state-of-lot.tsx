import type { LotView } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { useWords } from '../words/use-words.js';

const STATES = ['released', 'quarantined', 'rejected'] as const;

/** Releases, quarantines or rejects a lot, with the reason. What was used meanwhile comes to light. */
export const StateOfLot = ({ lot }: { readonly lot: LotView }) => {
  const { t, term } = useWords();
  return (
    <Allowed to="changeLotState" what={t('store.state')}>
      <RecordForm
        key={lot.state}
        groups={[
          {
            fields: [
              {
                name: 'state',
                label: t('store.newState'),
                kind: 'choice',
                options: STATES.filter((state) => state !== lot.state).map((state) => [state, term(state)]),
              },
              { name: 'reason', label: t('record.reason'), kind: 'words', hint: t('store.stateHint') },
            ],
          },
        ]}
        first={{ state: lot.state === 'released' ? 'quarantined' : 'released' }}
        button={t('store.recordState')}
        late
        send={(said, envelope) =>
          post(
            '/api/lots/:lot/states',
            { lot: lot.code },
            { ...envelope, state: said('state') as (typeof STATES)[number], reason: said('reason') },
          )
        }
        done={(receipt) => <Found of={receipt} words={t('store.isNow', { state: term(receipt.result.state) })} />}
      />
    </Allowed>
  );
};
