import { shapeOf } from '../../entry/draft/draft-nodes.js';
import { useWords } from '../../words/use-words.js';
import type { ScheduleDraft } from './schedule-draft.js';

const LABELS = {
  '/process': 'schedule.process',
  '/layers': 'schedule.layers',
  '/layers/*/code': 'schedule.code',
  '/layers/*/name': 'schedule.layerName',
  '/layers/*/zone': 'schedule.zone',
  '/layers/*/holdPoint': 'schedule.holdPoint',
  '/layers/*/plies': 'schedule.plies',
  '/layers/*/areaM2': 'schedule.areaM2',
  '/layers/*/lossAllowance': 'schedule.lossAllowance',
  '/layers/*/materials': 'schedule.g.materials',
  '/layers/*/materials/*/material': 'record.material',
  '/layers/*/materials/*/target/quantity': 'schedule.quantity',
  '/layers/*/materials/*/target/unit': 'schedule.unit',
  '/layers/*/laminate/plies': 'schedule.g.laminate',
  '/layers/*/laminate/plies/*/arealMass/value': 'schedule.arealMass',
  '/layers/*/laminate/plies/*/arealMass/unit': 'schedule.unit',
  '/layers/*/laminate/plies/*/fibreMassFraction': 'schedule.fibre',
  '/layers/*/laminate/tolerance': 'schedule.tolerance',
  '/layers/*/readings': 'schedule.g.readings',
  '/layers/*/readings/*/what': 'schedule.what',
  '/layers/*/readings/*/spots': 'schedule.spots',
  '/layers/*/readings/*/limits/min': 'schedule.min',
  '/layers/*/readings/*/limits/max': 'schedule.max',
  '/layers/*/readings/*/limits/unit': 'schedule.unit',
  '/layers/*/readings/*/where': 'schedule.where',
  '/layers/*/readings/*/source': 'schedule.source',
  '/layers/*/climate/airTemperature/min': 'schedule.airMin',
  '/layers/*/climate/airTemperature/max': 'schedule.airMax',
  '/layers/*/climate/airTemperature/unit': 'schedule.airUnit',
  '/layers/*/climate/relativeHumidity/min': 'schedule.humidityMin',
  '/layers/*/climate/relativeHumidity/max': 'schedule.humidityMax',
  '/layers/*/layUpWindow/earliestMinutes': 'schedule.earliest',
  '/layers/*/layUpWindow/latestMinutes': 'schedule.latest',
  '/layers/*/predecessors': 'schedule.predecessors',
} as const;

/** The words for each place of the draft of a schedule, and those for the layer that it is of. */
export const useScheduleLabels = ({ layers }: ScheduleDraft) => {
  const { t } = useWords();
  return {
    labelOf: (pointer: string): string | undefined => {
      const key = LABELS[shapeOf(pointer) as keyof typeof LABELS] as (typeof LABELS)[keyof typeof LABELS] | undefined;
      return key === undefined ? undefined : t(key);
    },
    whereOf: (pointer: string): string => {
      const index = layerIndexOf(pointer);
      if (index === undefined) return '';
      return `${layers[index]?.code.trim() || t('schedule.unnamed')} · `;
    },
  };
};

/** Which layer a pointer is into; undefined for none. */
export const layerIndexOf = (pointer: string): number | undefined => {
  const [, index] = /^\/layers\/(\d+)(?:\/|$)/.exec(pointer) ?? [];
  return index === undefined ? undefined : Number(index);
};
