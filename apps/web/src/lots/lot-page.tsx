import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { LotView } from '@hull-record/contracts';
import { paperPath } from '../api/ask.js';
import { lotQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { RecomputingNote } from '../asked/recomputing-note.js';
import { LotState } from '../marks/lot-state.js';
import { Verdicts } from '../record/verdicts.js';
import { Empty, Facts, Page, Section } from '../ui/page.js';
import { CalendarDay, Moment } from '../words/moments.js';
import { Term, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { HullsThatHold } from './hulls-that-hold.js';
import { Certificate, Composition, Inputs, States } from './lot-tables.js';

const route = getRouteApi('/lots/$lot');

/** One lot: what it is, what it is made of, and which hulls hold it. */
export const LotPage = () => {
  const { t } = useWords();
  const { lot } = route.useParams();
  const query = useQuery(lotQuery(lot));
  return (
    <Page title={t('lots.title', { lot })} kind={t('record.lot')} name={lot}>
      <Answer what={t('lots.lot', { lot })} query={query} notThere={<NotThere lot={lot} />}>
        {(view) => <Lot lot={view} />}
      </Answer>
    </Page>
  );
};

interface LotProps {
  readonly lot: LotView;
}

const Lot = ({ lot }: LotProps) => {
  const { t } = useWords();
  return (
    <>
      <p className="verdict">
        <LotState state={lot.state} holds={lot.holds} />
      </p>
      <Identity lot={lot} />
      <p>
        <a href={paperPath('/api/lots/:lot/report.pdf', { lot: lot.code })}>{t('lots.report')}</a>
        <span className="soft"> {t('lots.reportIs')}</span>
      </p>
      <p>
        <Link to="/store/lots/$lot" params={{ lot: lot.code }}>
          {t('holds.holdThisLot')}
        </Link>
      </p>
      <RecomputingNote of={lot.recomputing} />
      {lot.verdicts.length === 0 ? null : (
        <Section name={t('lots.judged')}>
          <Verdicts verdicts={lot.verdicts} />
        </Section>
      )}
      <Section name={t('lots.hulls')}>
        <HullsThatHold lot={lot.code} />
      </Section>
      <div className="pair">
        <Inputs lot={lot} />
        <Composition lot={lot} />
      </div>
      <div className="pair">
        <States lot={lot} />
        <Certificate lot={lot} />
      </div>
    </>
  );
};

const Identity = ({ lot }: LotProps) => {
  const { t, term, amount, mass } = useWords();
  const day = (at: string | null) => (at === null ? null : <CalendarDay at={at} />);
  const unlessNone = (kg: number) => (kg === 0 ? null : mass(kg));
  return (
    <Facts
      rows={[
        [t('record.material'), lot.materialName],
        [t('lots.role'), lot.role === null ? null : <Term word={lot.role} />],
        [t('lots.origin'), t(`record.origin.${lot.origin}`)],
        [t('lots.tank'), lot.tank],
        [t('record.supplier'), lot.supplier],
        [t('record.supplierLot'), lot.supplierLot === null ? null : <span className="n">{lot.supplierLot}</span>],
        [t('record.amount'), t('lots.amountAndBasis', { amount: amount(lot.amount), basis: term(lot.amount.basis) })],
        [t('lots.madeOn'), day(lot.madeOn)],
        [t('lots.lastDay'), day(lot.expiresOn)],
        [lot.origin === 'received' ? t('lots.received') : t('lots.madeHere'), <Moment at={lot.happenedAt} />],
        [t('lots.used'), mass(lot.usedKg)],
        [t('lots.gainOrLoss'), unlessNone(lot.adjustedKg)],
        [t('lots.lost'), unlessNone(lot.lostKg)],
        [t('lots.left'), mass(lot.leftKg)],
      ]}
    />
  );
};

const NotThere = ({ lot }: { readonly lot: string }) => (
  <Empty>
    <Text of="lots.notThere" with={{ lot, list: (inside) => <Link to="/lots">{inside}</Link> }} />
  </Empty>
);
