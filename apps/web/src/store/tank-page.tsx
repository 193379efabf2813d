import type { LotView, TankView } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { lotQuery } from '../api/queries.js';
import { tanksQuery } from '../api/queries-of-store.js';
import { Answer } from '../asked/answer.js';
import { RecomputingNote } from '../asked/recomputing-note.js';
import { LotState } from '../marks/lot-state.js';
import { LotLink } from '../record/links.js';
import { Empty, Facts, Page, Section } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { useWords } from '../words/use-words.js';
import { EmptyTank } from './empty-tank.js';
import { FillTank } from './fill-tank.js';
import { GaugeTank } from './gauge-tank.js';
import { letterOf, TankDrawing } from './tank-drawing.js';

const route = getRouteApi('/tanks/$tank');

/** One bulk tank: what is in it now, drawn to scale, and what is done to it. */
export const TankPage = () => {
  const { t } = useWords();
  const { tank: code } = route.useParams();
  const query = useQuery(tanksQuery);
  return (
    <Page title={t('store.tank', { tank: code })} kind={t('store.aTank')} name={code}>
      <Answer what={t('store.tank', { tank: code })} query={query}>
        {(tanks) => {
          const tank = tanks.find((each) => each.code === code);
          return tank === undefined ? (
            <Empty>
              {t('store.noSuchTank', { tank: code })} <Link to="/store">{t('store.title')}</Link>
            </Empty>
          ) : (
            <Tank tank={tank} />
          );
        }}
      </Answer>
    </Page>
  );
};

const Tank = ({ tank }: { readonly tank: TankView }) => {
  const { t, mass } = useWords();
  return (
    <>
      <Facts
        rows={[
          [t('record.material'), tank.material],
          [t('store.capacity'), mass(tank.capacityKg)],
          [t('store.holdsNow'), tank.lot === null ? t('store.nothing') : <LotLink to={tank.lot} />],
          [t('store.left'), tank.bookKg === null ? null : mass(tank.bookKg)],
        ]}
      />
      <Section name={t('store.whatIsIn')}>
        {tank.lot === null ? <Empty>{t('store.emptyTankHelp')}</Empty> : <Contents tank={tank} lot={tank.lot} />}
      </Section>
      <Section name={t('store.fill')}>
        <FillTank key={tank.lot} tank={tank} />
      </Section>
      {tank.lot === null ? null : (
        <>
          <Section name={t('store.gauge')}>
            <GaugeTank tank={tank} lot={tank.lot} />
          </Section>
          <Section name={t('store.emptyIt')}>
            <EmptyTank tank={tank} />
          </Section>
        </>
      )}
    </>
  );
};

const Contents = ({ tank, lot }: { readonly tank: TankView; readonly lot: string }) => {
  const { t } = useWords();
  const query = useQuery(lotQuery(lot));
  return (
    <Answer what={t('store.whatIsIn')} query={query}>
      {(view) => <Composition tank={tank} lot={view} />}
    </Answer>
  );
};

const Composition = ({ tank, lot }: { readonly tank: TankView; readonly lot: LotView }) => {
  const { t, mass, percent } = useWords();
  const left = Math.max(0, tank.bookKg ?? 0);
  const shares = [...lot.composition]
    .sort((a, b) => b.fraction - a.fraction)
    .map(({ source, fraction }, i) => ({ source, fraction, kg: fraction * left, letter: letterOf(i) }));
  return (
    <>
      <RecomputingNote of={lot.recomputing} />
      <div className="tank-and-list">
        <TankDrawing capacityKg={tank.capacityKg} largestKg={tank.capacityKg} shares={shares} letters />
        <Table
          caption={t('store.contentsCaption')}
          columns={[
            { head: t('store.band'), cell: ({ letter }) => letter },
            {
              head: t('record.lot'),
              cell: ({ source }) => (source === null ? t('store.allOthers') : <LotLink to={source} />),
              names: true,
              class: 'n',
            },
            { head: t('store.share'), cell: ({ fraction }) => percent(fraction), class: 'r' },
            { head: t('store.kgIn'), cell: ({ kg }) => mass(kg), class: 'r' },
          ]}
          rows={shares}
        />
      </div>
      <p>
        <LotState state={lot.state} /> <span className="soft">{t('store.filledAt')}</span>{' '}
        <Moment at={lot.happenedAt} />
      </p>
      <p className="note soft">
        {t('record.wellMixed')} {t('store.bandsNote')}
      </p>
    </>
  );
};
