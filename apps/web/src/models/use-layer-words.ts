import type { ScheduleView } from '@hull-record/contracts';
import { unitSign } from '../words/figures.js';
import { useWords } from '../words/use-words.js';
import type { Words } from '../words/words.js';
import type { LayerField } from './changes.js';

type Layer = ScheduleView['layers'][number];

/** What a schedule says of a layer, field by field, each item in words of its own; none where it says nothing. */
export const useLayerWords = (): ((field: LayerField, layer: Layer) => readonly string[]) => {
  const words = useWords();
  return (field, layer) => WORDS[field](layer, words);
};

const WORDS: Readonly<Record<LayerField, (layer: Layer, words: Words) => readonly string[]>> = {
  name: ({ name }) => [name],
  zone: ({ zone }, { term }) => [term(zone)],
  plies: ({ plies }) => plies,
  laminate: ({ laminate }, { t, plain, percent }) =>
    laminate === undefined
      ? []
      : [
          ...laminate.plies.map(({ arealMass: { value, unit }, fibreMassFraction }) =>
            t('models.plyIs', {
              ...{ mass: plain(String(value)), unit: unitSign(unit), percent: percent(fibreMassFraction) },
            }),
          ),
          t('models.tolerance', { percent: `±${percent(laminate.tolerance)}` }),
        ],
  areaM2: ({ areaM2 }, { t, plain }) =>
    areaM2 === undefined ? [] : [t('models.areaIs', { area: plain(String(areaM2)) })],
  materials: ({ materials }, { plain }) =>
    materials.map(({ material, target }) =>
      target === undefined ? material : `${material} ${plain(String(target.quantity))} ${unitSign(target.unit)}`,
    ),
  lossAllowance: ({ lossAllowance: loss }, { t, percent }) =>
    loss === undefined ? [] : [t('models.loss', { percent: percent(loss) })],
  readings: ({ readings }, { t, term, limits }) =>
    readings.map(({ what, spots: count, limits: of, where, source }) =>
      [
        t('models.readingIs', { what: term(what), count, limits: limits(of) }),
        ...(where === undefined ? [] : [where]),
        ...(source === undefined ? [] : [t('models.by', { source })]),
      ].join(', '),
    ),
  climate: ({ climate }, { t, limits }) => [
    ...(climate?.airTemperature ? [t('models.airIs', { limits: limits(climate.airTemperature) })] : []),
    ...(climate?.relativeHumidity ? [t('models.humidityIs', { limits: limits(climate.relativeHumidity) })] : []),
  ],
  layUpWindow: ({ layUpWindow: window }, { t, figure }) => {
    if (window === undefined) return [];
    const span = (minutes: number): string =>
      minutes < 120
        ? t('models.minutes', { minutes: figure(minutes) })
        : t('models.hours', { hours: figure(minutes / 60, 3) });
    const until = span(window.latestMinutes);
    if (window.earliestMinutes === 0) return [t('models.windowNow', { until })];
    return [t('models.windowIs', { from: span(window.earliestMinutes), until })];
  },
  predecessors: ({ predecessors }, { t }) =>
    predecessors.length === 0 ? [] : [t('models.after', { layers: predecessors.join(', ') })],
  holdPoint: ({ holdPoint }, { t }) => (holdPoint === undefined ? [] : [t('models.holdPointIs', { name: holdPoint })]),
};
