import type { StoreOfLot } from '@hull-record/contracts';
import { Link } from '@tanstack/react-router';
import { post } from '../api/ask.js';
import { useMay } from '../api/use-may.js';
import { Allowed } from '../entry/allowed.js';
import { decimal, given } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { mark, tape } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { Empty } from '../ui/page.js';
import { Moment } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

type Hold = StoreOfLot['holds'][number];

interface HoldsProps {
  readonly lot: string;
  readonly holds: readonly Hold[];
}

const KINDS = ['quality', 'safety'] as const;

/** What holds a lot or a container of it, lifting it, and a new hold. */
export const HoldsOfLot = ({ lot, holds }: HoldsProps) => {
  const { t, term } = useWords();
  return (
    <>
      {holds.length === 0 ? <Empty>{t('store.noHolds')}</Empty> : null}
      <ul className="plain">
        {holds.map((hold) => (
          <li key={hold.id}>
            <OneHold hold={hold} />
          </li>
        ))}
      </ul>
      <Fold summary={t('store.placeHold')}>
        <Allowed to="placeHold" what={t('store.placeHold')}>
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
        </Allowed>
      </Fold>
    </>
  );
};

const OneHold = ({ hold: { id, kind, reason, container, happenedAt, lifted } }: { readonly hold: Hold }) => {
  const { t, term } = useWords();
  const may = useMay();
  const of = container === null ? t('store.theLot') : container;
  const words = (
    <>
      {t('store.holdOf', { kind: term(kind), of })} <Said text={reason} />, <Moment at={happenedAt} />
    </>
  );
  const hulls = (
    <Link to="/holds/$hold" params={{ hold: id }}>
      {t('holds.hulls')}
    </Link>
  );
  if (lifted !== null)
    return mark(
      'made',
      <>
        {words}. {t('store.lifted')} <Said text={lifted.reason} /> {hulls}
      </>,
    );
  return (
    <>
      {tape(words)} {hulls}
      {may('liftHold') ? (
        <Fold summary={t('store.lift')}>
          <RecordForm
            groups={[{ fields: [{ name: 'reason', label: t('record.reason'), kind: 'words' }] }]}
            button={t('store.liftDo')}
            sure={() => t('store.liftSure')}
            send={(said, envelope) =>
              post('/api/holds/:hold/lifts', { hold: id }, { ...envelope, reason: said('reason') })
            }
            done={() => <p>{mark('made', t('store.liftedNow'))}</p>}
          />
        </Fold>
      ) : null}
    </>
  );
};
