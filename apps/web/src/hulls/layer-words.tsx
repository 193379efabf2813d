import type { Climate, PartView } from '@hull-record/contracts';
import type { ReactNode } from 'react';
import { ScheduledWords } from '../record/scheduled-words.js';
import { Span } from '../words/moments.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

type Layer = PartView['layers'][number];

interface LayerWordsProps {
  readonly layer: Layer;
}

/** What a layer is, and when, by whom and in what climate it was made. */
export const LayerWords = ({ layer: { scheduled, demand, record } }: LayerWordsProps) => (
  <>
    <ScheduledWords layer={scheduled} demand={demand} isBold={record !== null} />
    {record === null ? null : <Made record={record} />}
  </>
);

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
