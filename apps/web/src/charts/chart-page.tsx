import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link, useNavigate } from '@tanstack/react-router';
import type { ChartView } from '@hull-record/contracts';
import { chartQuery, chartsQuery } from '../api/queries-of-charts.js';
import { Answer } from '../asked/answer.js';
import { mark } from '../marks/mark.js';
import { usePreferences } from '../preferences/use-preferences.js';
import { Empty, Page, Section } from '../ui/page.js';
import { wishedUnit } from '../words/measures.js';
import { unitSign } from '../words/figures.js';
import { useWords } from '../words/use-words.js';
import { BrokenRules } from './broken-rules.js';
import { CapabilityFacts } from './capability-facts.js';
import { ChartDrawing } from './chart-drawing.js';
import { ChartsWords } from './charts-words.js';
import { ChartFilter } from './chart-filter.js';
import { FrozenLimits } from './frozen-limits.js';
import { PointsTable } from './points-table.js';
import { DRAWN, seriesOf } from './series-of.js';
import { useSentence } from './use-sentence.js';

const route = getRouteApi('/charts/$what');

/** A process by its hulls: is it stable, does it drift, does it fit what is specified. Never by person. */
export const ChartPage = () => (
  <ChartsWords>
    <Body />
  </ChartsWords>
);

const Body = () => {
  const { t, term } = useWords();
  const { what } = route.useParams();
  const search = route.useSearch();
  const navigate = route.useNavigate();
  const { model = '', part = 'hull molding', layer = '', ...narrowed } = search;
  const { mold = '', gun = '', area = '', from = '', to = '', rules = '', run = '' } = narrowed;
  const unit = useUnit(what, model, part, layer);
  const query = useQuery(
    chartQuery(what, { model, part, layer, mold, gun, area, from, to, rules, run, unit } as never),
  );
  const name = t('charts.of', { what: term(what), model, part: term(part), layer: layer || t('charts.allLayers') });
  return (
    <Page title={name} name={name}>
      <p>
        <Link to="/charts">{t('charts.all')}</Link>
      </p>
      <ChartFilter
        chart={query.data}
        values={{ mold, gun, area, from, to, rules, run }}
        onChosen={(chosen) => void navigate({ search: { model, part, layer, ...chosen }, replace: true })}
        error={query.error}
      />
      <Answer what={t('charts.this')} query={query} notThere={<Empty>{t('charts.notThere')}</Empty>}>
        {(chart) => <Chart chart={chart} />}
      </Answer>
    </Page>
  );
};

/** The unit that the reader chose for what is charted, when it is another than it is read in. */
const useUnit = (what: string, model: string, part: string, layer: string): string => {
  const [preferences] = usePreferences();
  const { data = [] } = useQuery(chartsQuery);
  const listed = data.find(
    (each) => each.what === what && each.model === model && each.part === part && (each.layer ?? '') === layer,
  );
  if (listed === undefined || listed.unit === 'K') return '';
  return wishedUnit(listed.unit, preferences) ?? '';
};

const Chart = ({ chart }: { readonly chart: ChartView }) => {
  const { t } = useWords();
  return (
    <>
      <Section name={t('charts.limits')}>
        <FrozenLimits chart={chart} />
      </Section>
      {chart.why === null ? <Drawings chart={chart} /> : <Empty>{t(WHY_NOT[chart.why])}</Empty>}
      <Section name={t('charts.capability')}>
        <CapabilityFacts chart={chart} />
      </Section>
    </>
  );
};

const WHY_NOT = { 'too few hulls': 'charts.tooFewHulls', 'no spread': 'charts.noSpread' } as const;

const Drawings = ({ chart }: { readonly chart: ChartView }) => {
  const { t } = useWords();
  const navigate = useNavigate();
  const sentence = useSentence(chart);
  const openHull = (at: number): void => {
    const number = chart.points[at]?.hull;
    if (typeof number === 'string') void navigate({ to: '/hulls/$number', params: { number } });
  };
  const shown = DRAWN.filter((drawn) => seriesOf(drawn, chart).some(({ value }) => value !== null));
  return (
    <>
      <Section name={t('charts.whatBreaks')}>
        <BrokenRules chart={chart} />
        {chart.following?.correlated ? <p>{mark('near', t('charts.correlated'))}</p> : null}
        {chart.leftOut === 0 ? null : <p>{t('charts.leftOut', { count: chart.leftOut })}</p>}
      </Section>
      <Section name={t('charts.drawings')}>
        <p className="note soft">{t('charts.howToRead', { unit: unitSign(chart.unit) })}</p>
        {shown.map((drawn) => (
          <ChartDrawing
            key={drawn}
            name={t(`charts.drawn.${drawn}`)}
            spots={seriesOf(drawn, chart)}
            sentence={sentence(drawn)}
            onPick={openHull}
          />
        ))}
        {chart.within === null ? <p className="note">{t('charts.noWithin')}</p> : null}
      </Section>
      <Section name={t('charts.table')}>
        <PointsTable chart={chart} />
      </Section>
    </>
  );
};
