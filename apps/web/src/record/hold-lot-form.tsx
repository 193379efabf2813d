import { Link } from '@tanstack/react-router';
import { post } from '../api/ask.js';
import { decimal, given } from '../entry/entry-field.js';
import { boundsFields, boundsSaid } from '../entry/hold-bounds.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { useZone } from '../entry/use-zone.js';
import { useWords } from '../words/use-words.js';

const KINDS = ['quality', 'safety'] as const;

/** Places a hold on a lot, or on one container of it; says how many hulls it reaches, and leads to them. */
export const HoldLotForm = ({ lot }: { readonly lot: string }) => {
  const { t, term } = useWords();
  const clock = useZone();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            {
              name: 'kind',
              label: t('store.holdKind'),
              kind: 'choice',
              options: KINDS.map((kind) => [kind, term(kind)]),
              hint: t('store.safetyHint'),
            },
            { name: 'reason', label: t('record.reason'), kind: 'words' },
            { name: 'minShare', label: t('holds.leastShare'), kind: 'decimal', hint: t('holds.leastShareHint') },
            { name: 'container', label: t('store.onlyContainer'), hint: t('store.onlyContainerHint') },
            ...boundsFields(t),
          ],
        },
      ]}
      first={{ kind: 'quality' }}
      button={t('store.placeHoldDo')}
      late
      send={(said, envelope) =>
        post(
          '/api/lots/:lot/holds',
          { lot },
          {
            ...envelope,
            kind: said('kind') as (typeof KINDS)[number],
            reason: said('reason'),
            ...(said('minShare') === '' ? {} : { minShare: Number(decimal(said('minShare'))) / 100 }),
            ...given('container', said('container')),
            ...boundsSaid(said, clock),
          },
        )
      }
      done={(receipt) => (
        <Found
          of={receipt}
          words={
            <>
              {t('store.heldNow', { lot })}{' '}
              {t('holds.placed', { reached: receipt.result.reached, below: receipt.result.below })}{' '}
              <Link to="/holds/$hold" params={{ hold: receipt.id }}>
                {t('holds.hulls')}
              </Link>
            </>
          }
        />
      )}
    />
  );
};
