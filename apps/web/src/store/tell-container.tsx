import type { ContainerView } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { given } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { useWords } from '../words/use-words.js';

const TOLD = ['moved', 'opened', 'returned to stock', 'emptied', 'rejected', 'accepted'] as const;

/** Says what became of a container: moved, opened, returned, emptied, rejected, accepted. */
export const TellContainer = ({ containers }: { readonly containers: readonly ContainerView[] }) => {
  const { t, term } = useWords();
  return (
    <Allowed to="tellContainer" what={t('store.tell')}>
      <RecordForm
        groups={[
          {
            fields: [
              {
                name: 'label',
                label: t('store.label'),
                kind: 'choice',
                options: containers.map(({ label }) => [label, label]),
              },
              {
                name: 'what',
                label: t('record.what'),
                kind: 'choice',
                options: TOLD.map((what) => [what, term(what)]),
              },
              { name: 'place', label: t('record.place'), hint: t('store.placeWhen') },
              { name: 'note', label: t('record.note'), kind: 'words' },
            ],
          },
        ]}
        first={{ label: containers.length === 1 ? (containers[0]?.label ?? '') : '' }}
        button={t('store.tellDo')}
        late
        send={(said, envelope) =>
          post(
            '/api/containers/:label/history',
            { label: said('label') },
            {
              ...envelope,
              what: said('what') as (typeof TOLD)[number],
              ...given('place', said('place')),
              ...given('note', said('note')),
            },
          )
        }
        done={(receipt) => <Found of={receipt} words={t('store.told', { what: term(receipt.result.what) })} />}
      />
    </Allowed>
  );
};
