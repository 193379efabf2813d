import type { Climate, PartView } from '@hull-record/contracts';
import type { ReactNode } from 'react';
import { Span } from '../words/moments.js';
import { Said, Term, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

type Layer = PartView['layers'][number];

interface LayerWordsProps {
  readonly layer: Layer;
}

/** What a layer is, and when, by whom and in what climate it was made. */
export const LayerWords = ({ layer: { scheduled, demand, record } }: LayerWordsProps) => {
  const { code, name, plies, zone } = scheduled;
  return (
    <>
      <p className={record === null ? 'name' : 'name b'}>
        <span className="n">{code}</span> <Said text={name} />
      </p>
      {plies.length === 0 ? null : (
        <p>
          <Said text={plies.join(', ')} />
        </p>
      )}
      {zone === 'whole part' ? null : (
        <p>
          <Text of="hulls.zone" with={{ zone: <Term word={zone} /> }} />
        </p>
      )}
      {demand === null ? null : <Demand of={demand} />}
      {record === null ? null : <Made record={record} />}
    </>
  );
};

const Made = ({ record }: { readonly record: NonNullable<Layer['record']> }) => {
  const { t } = useWords();
  const made = {
    when: <Span from={record.startedAt} to={record.endedAt} />,
    by: record.doneBy.join(', '),
    enteredBy: record.enteredBy,
  };
  return (
    <>
      <p className="note soft">
        <Text of="hulls.madeBy" with={made} />
        {record.climate === null ? null : <ClimateWords of={record.climate} />}
        {record.corrected ? ` ${t('hulls.correctedLayer')}` : null}
      </p>
      {record.note === null ? null : (
        <p className="note">
          <Said text={record.note} />
        </p>
      )}
    </>
  );
};

/** What the layer is to become and to take, without waste. */
const Demand = ({ of: { thicknessMm, glassKg, resinKg } }: { readonly of: NonNullable<Layer['demand']> }) => {
  const { t, figure, mass } = useWords();
  const words = [
    t('hulls.bySchedule', { mm: figure(thicknessMm, 3) }),
    ...(glassKg === null ? [] : [t('hulls.glass', { mass: mass(glassKg, 3) })]),
    ...(resinKg === null ? [] : [t('hulls.resin', { mass: mass(resinKg, 3) })]),
  ];
  return <p className="note">{words.join(', ')}</p>;
};

const ClimateWords = ({ of }: { readonly of: Climate }): ReactNode => {
  const { t, reading } = useWords();
  const { airTemperature: air, moldTemperature: mold, relativeHumidity: humidity } = of;
  const value = (measured: { value: number; unit: string }): string =>
    reading(String(measured.value), null, measured.unit);
  const all = [
    ...(air ? [t('hulls.air', { value: value(air) })] : []),
    ...(mold ? [t('hulls.moldAt', { value: value(mold) })] : []),
    ...(humidity ? [t('hulls.humidity', { value: value(humidity) })] : []),
  ];
  return all.length === 0 ? null : ` ${all.join(', ')}.`.replace(/^ ./, (first) => first.toUpperCase());
};
