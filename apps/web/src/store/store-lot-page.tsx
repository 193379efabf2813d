import type { LotView, StoreOfLot } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { lotQuery } from '../api/queries.js';
import { storeOfLotQuery } from '../api/queries-of-store.js';
import { Answer } from '../asked/answer.js';
import { together } from '../asked/together.js';
import { LotState } from '../marks/lot-state.js';
import { tape } from '../marks/mark.js';
import { LotLink } from '../record/links.js';
import { Empty, Facts, Page, Section } from '../ui/page.js';
import { CalendarDay, Day } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { BalanceOfLot } from './balance-of-lot.js';
import { CertificateOfLot } from './certificate-of-lot.js';
import { ContainersOfLot } from './containers-of-lot.js';
import { HoldsOfLot } from './holds-of-lot.js';
import { LotActs } from './lot-acts.js';
import { StateOfLot } from './state-of-lot.js';

const route = getRouteApi('/store/lots/$lot');

/** What the store knows of a lot, and what is done with it there. */
export const StoreLotPage = () => {
  const { t } = useWords();
  const { lot } = route.useParams();
  const both = together([useQuery(lotQuery(lot)), useQuery(storeOfLotQuery(lot))]);
  return (
    <Page title={t('store.lotTitle', { lot })} kind={t('store.lotInStore')} name={lot}>
      <Answer
        what={t('store.aLot', { lot })}
        query={both}
        notThere={
          <Empty>
            {t('store.noSuchLot', { lot })} <Link to="/lots">{t('app.nav.lots')}</Link>
          </Empty>
        }
      >
        {([view, store]) => <Lot lot={view} store={store} />}
      </Answer>
    </Page>
  );
};

interface LotProps {
  readonly lot: LotView;
  readonly store: StoreOfLot;
}

const Lot = ({ lot, store }: LotProps) => {
  const { t, mass, amount, term } = useWords();
  const held = store.holds.filter(({ lifted }) => lifted === null);
  const lastDay = store.retests.at(-1)?.expiresOn ?? lot.expiresOn;
  return (
    <>
      <p className="verdict">
        <LotState state={lot.state} />{' '}
        {held.map(({ id, reason, kind }) => (
          <span key={id}>
            {tape(
              <>
                {t('store.held', { kind: term(kind) })} <Said text={reason} />
              </>,
            )}
          </span>
        ))}
      </p>
      <Facts
        rows={[
          [t('record.material'), lot.materialName],
          [t('record.supplier'), lot.supplier],
          [t('record.supplierLot'), lot.supplierLot === null ? null : <span className="n">{lot.supplierLot}</span>],
          [t('record.amount'), amount(lot.amount)],
          [t('store.received'), <Day at={lot.happenedAt} />],
          [t('store.lastDay'), lastDay === null ? null : <CalendarDay at={lastDay} />],
          [t('store.left'), mass(lot.leftKg)],
          [t('store.whereItWent'), <LotLink to={lot.code} />],
        ]}
      />
      <p className="buttons">
        <Link to="/labels" search={{ of: 'lot', codes: lot.code }} className="btn">
          {t('store.printLotLabel')}
        </Link>
      </p>
      <Section name={t('store.state')}>
        <StateOfLot lot={lot} />
      </Section>
      <Section name={t('store.containers')}>
        <ContainersOfLot lot={lot} containers={store.containers} />
      </Section>
      <Section name={t('store.holds')}>
        <HoldsOfLot lot={lot.code} holds={store.holds} />
      </Section>
      <Section name={t('store.acts')}>
        <LotActs lot={lot} />
      </Section>
      <Section name={t(lot.origin === 'unidentified' ? 'store.photosOfMaterial' : 'store.certificate')}>
        <CertificateOfLot lot={lot.code} isUnidentified={lot.origin === 'unidentified'} photos={store.photos} />
      </Section>
      <Section name={t('store.balance')}>
        <BalanceOfLot lot={lot.code} />
      </Section>
    </>
  );
};
