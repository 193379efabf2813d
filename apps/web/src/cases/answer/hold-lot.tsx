import { Link } from '@tanstack/react-router';
import { post } from '../../api/ask.js';
import { Allowed } from '../../entry/allowed.js';
import { decimal } from '../../entry/entry-field.js';
import { Found } from '../../entry/found.js';
import { RecordForm } from '../../entry/record-form.js';
import { Fold } from '../../ui/fold.js';
import { useWords } from '../../words/use-words.js';

const KINDS = ['quality', 'safety'] as const;

/** Places a hold on a lot that stands out, from where that is seen. */
export const HoldLot = ({ lot }: { readonly lot: string }) => {
  const { t, term } = useWords();
  return (
    <Fold summary={t('cases.holdLot', { lot })}>
      <Allowed to="placeHold" what={t('cases.holdLot', { lot })}>
        <p className="caution">{t('cases.holdIs')}</p>
        <RecordForm
          groups={[
            {
              fields: [
                {
                  ...{ name: 'kind', label: t('store.holdKind'), kind: 'choice', hint: t('store.safetyHint') },
                  options: KINDS.map((kind) => [kind, term(kind)]),
                },
                { name: 'reason', label: t('record.reason'), kind: 'words' },
                { name: 'minShare', label: t('holds.leastShare'), kind: 'decimal', hint: t('holds.leastShareHint') },
              ],
            },
          ]}
          first={{ kind: 'quality' }}
          button={t('store.placeHoldDo')}
          send={(said, envelope) =>
            post(
              '/api/lots/:lot/holds',
              { lot },
              {
                ...envelope,
                kind: said('kind') as (typeof KINDS)[number],
                reason: said('reason'),
                ...(said('minShare') === '' ? {} : { minShare: Number(decimal(said('minShare'))) / 100 }),
              },
            )
          }
          done={({ id, result: { reached, below } }) => (
            <Found
              of={{ result: {} }}
              words={
                <>
                  {t('holds.placed', { reached, below })}{' '}
                  <Link to="/holds/$hold" params={{ hold: id }}>
                    {t('holds.hulls')}
                  </Link>
                </>
              }
            />
          )}
        />
      </Allowed>
    </Fold>
  );
};
