import type { Limits, ReadingView, ScheduleLayer } from '@hull-record/contracts';
import { mark } from '../marks/mark.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { ReadingsPlot } from './readings-plot.js';
import { Spots } from './spots.js';

type Required = ScheduleLayer['readings'][number];

interface ReadingsProps {
  readonly readings: readonly ReadingView[];
  readonly required?: readonly Required[];
  /** Whether they are drawn as plots too. */
  readonly drawn?: boolean;
}

/** Readings by kind with the limits each was judged by; each spot has its own verdict. Kinds not read yet are named. */
export const Readings = ({ readings, required = [], drawn = false }: ReadingsProps) => {
  const { t } = useWords();
  const alike = ({ what, unit, rule }: ReadingView): string => `${what}/${unit}/${rule.text}`;
  const kinds = [...new Set(readings.map(alike))];
  const missing = required.filter(({ what }) => !readings.some((reading) => reading.what === what));
  if (kinds.length + missing.length === 0) return t('readings.noneRequired');
  return (
    <>
      {kinds.map((kind) => (
        <Group key={kind} drawn={drawn} readings={readings.filter((reading) => alike(reading) === kind)} />
      ))}
      {missing.map((each, i) => (
        <NotRead key={i} of={each} />
      ))}
    </>
  );
};

const NotRead = ({ of: { what, spots: count, limits: of } }: { readonly of: Required }) => {
  const { t, term, limits } = useWords();
  return <p>{mark('to come', t('readings.notRead', { what: term(what), count, limits: limits(of) }))}</p>;
};

interface GroupProps {
  readonly readings: readonly ReadingView[];
  readonly drawn: boolean;
}

const Group = ({ readings, drawn }: GroupProps) => {
  const { t, term, limits } = useWords();
  const [first] = readings;
  if (first === undefined) return null;
  const limit = first.rule.limits as Limits | null;
  const gauges = [...new Set(readings.flatMap(({ equipment }) => equipment ?? []))].join(', ');
  const by = [...new Set(readings.map((reading) => reading.by))].join(', ');
  return (
    <>
      <p>
        <b>{term(first.what)}</b>
        {`, ${limit === null ? term('no limit') : limits(limit)}`}
      </p>
      {drawn ? <ReadingsPlot readings={readings} /> : null}
      <Spots readings={readings} />
      <p className="note soft">
        {gauges === '' ? null : `${t('readings.gauge', { gauges })} `}
        {t('readings.readBy', { by })} <Said text={first.rule.text} />
      </p>
    </>
  );
};
