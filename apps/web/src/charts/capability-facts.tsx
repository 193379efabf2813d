import type { ChartView } from '@hull-record/contracts';
import { mark } from '../marks/mark.js';
import { Facts } from '../ui/page.js';
import { unitSign } from '../words/figures.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

type Indices = Extract<ChartView['capability'], { says: 'indices' }>;
type Index = NonNullable<Indices['short']>;

/** How single readings fit their limits; an index never without its interval, and what speaks against it said first. */
export const CapabilityFacts = ({ chart }: { readonly chart: ChartView }) => {
  const { t } = useWords();
  const { capability, specification } = chart;
  return (
    <>
      {specification === null ? null : <SpecificationWords chart={chart} />}
      {capability.says === 'indices' ? (
        <IndicesFacts chart={chart} of={capability} />
      ) : (
        <p>{mark('none', whyNot(capability, t))}</p>
      )}
    </>
  );
};

const whyNot = (capability: Exclude<ChartView['capability'], Indices>, t: ReturnType<typeof useWords>['t']): string => {
  if (capability.says === 'gauge too coarse') return t('charts.tooCoarse', { count: capability.steps });
  if (capability.says === 'too few') return t('charts.fewForCapability', { count: capability.hulls });
  return t(capability.says === 'no specification' ? 'charts.noSpecification' : 'charts.specificationChanged');
};

const SpecificationWords = ({ chart: { specification, unit } }: { readonly chart: ChartView }) => {
  const { t, figure } = useWords();
  if (specification === null) return null;
  const { min, max, source } = specification;
  const [least, most] = [min, max].map((limit) => (limit === null ? '–' : figure(limit, 4)));
  return (
    <p>
      {t('charts.specification', { least: least ?? '–', most: most ?? '–', unit: unitSign(unit) })}{' '}
      <Said text={source} />
    </p>
  );
};

const IndicesFacts = ({ chart, of }: { readonly chart: ChartView; readonly of: Indices }) => {
  const { t, figure } = useWords();
  const rows = [...indexRows(of.short, 'C', figure), ...indexRows(of.long, 'P', figure)];
  return (
    <>
      {chart.stable === false ? <p>{mark('near', t('charts.notStable'))}</p> : null}
      {of.skew?.skewed ? <p>{mark('near', t('charts.skewed'))}</p> : null}
      {of.ofLogarithms ? <p>{t('charts.ofLogarithms')}</p> : null}
      {of.byIntervals ? <p>{t('charts.byIntervals', { count: of.steps })}</p> : null}
      <Facts rows={rows} />
      <p className="note soft">{t('charts.capabilityNote', { readings: of.readings, effective: of.effective })}</p>
    </>
  );
};

type Named = readonly [name: string, value: string];

/** Of a specification with one side there is no Cp: the side that there is stands alone. */
const indexRows = (
  index: Index | null,
  letter: string,
  figure: (value: number, digits?: number) => string,
): Named[] => {
  if (index === null) return [];
  const withInterval = (value: number, interval: Index['cpInterval']): string =>
    `${figure(value, 3)} (${interval === null ? '–' : `${figure(interval.lower, 3)} – ${figure(interval.upper, 3)}`})`;
  const side = index.cpUpper === null ? 'l' : index.cpLower === null ? 'u' : 'k';
  return [
    ...(index.cp === null ? [] : [[`${letter}p`, withInterval(index.cp, index.cpInterval)] as const]),
    ...(index.cpk === null ? [] : [[`${letter}p${side}`, withInterval(index.cpk, index.cpkInterval)] as const]),
  ];
};
