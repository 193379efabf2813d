import type { StoreOfLot } from '@hull-record/contracts';
import { Link } from '@tanstack/react-router';
import { post } from '../api/ask.js';
import { useMay } from '../api/use-may.js';
import { Allowed } from '../entry/allowed.js';
import { RecordForm } from '../entry/record-form.js';
import { mark, tape } from '../marks/mark.js';
import { HoldLotForm } from '../record/hold-lot-form.js';
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

/** What holds a lot or a container of it, lifting it, and a new hold. */
export const HoldsOfLot = ({ lot, holds }: HoldsProps) => {
  const { t } = useWords();
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
          <HoldLotForm lot={lot} />
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
