import type { FieldError } from '../../api/problem.js';
import { figureTyped } from '../typed-figures.js';
import type { LayerDraft, LimitsDraft, ScheduleDraft } from './schedule-draft.js';

/** What is wrong with a field before it is sent: nothing is in it, it is no figure, or no percentage below 100. */
export type Fault = 'empty' | 'noFigure' | 'noPercent';

type Found = readonly [pointer: string, fault: Fault];

const filled = (at: string, typed: string): readonly Found[] => (typed.trim() === '' ? [[at, 'empty']] : []);
const figure = (at: string, typed: string): readonly Found[] =>
  Number.isNaN(figureTyped(typed)) ? [[at, 'noFigure']] : [];
const needed = (at: string, typed: string): readonly Found[] => [...filled(at, typed), ...figure(at, typed)];

const percent = (at: string, typed: string): readonly Found[] => {
  const value = figureTyped(typed);
  return value === undefined || (value >= 0 && value < 100) ? [] : [[at, 'noPercent']];
};

const limits = (at: string, { min, max }: LimitsDraft): readonly Found[] => [
  ...figure(`${at}/min`, min),
  ...figure(`${at}/max`, max),
];

const layer = (at: string, of: LayerDraft): readonly Found[] => [
  ...filled(`${at}/code`, of.code),
  ...filled(`${at}/name`, of.name),
  ...figure(`${at}/areaM2`, of.areaM2),
  ...percent(`${at}/lossAllowance`, of.lossAllowance),
  ...of.laminate.plies.flatMap(({ arealMass, fibreMassFraction }, i) => [
    ...needed(`${at}/laminate/plies/${i}/arealMass/value`, arealMass.value),
    ...filled(`${at}/laminate/plies/${i}/fibreMassFraction`, fibreMassFraction),
    ...percent(`${at}/laminate/plies/${i}/fibreMassFraction`, fibreMassFraction),
  ]),
  ...percent(`${at}/laminate/tolerance`, of.laminate.tolerance),
  ...of.materials.flatMap(({ material, target }, i) => [
    ...filled(`${at}/materials/${i}/material`, material),
    ...figure(`${at}/materials/${i}/target/quantity`, target.quantity),
  ]),
  ...of.readings.flatMap((reading, i) => [
    ...filled(`${at}/readings/${i}/what`, reading.what),
    ...needed(`${at}/readings/${i}/spots`, reading.spots),
    ...limits(`${at}/readings/${i}/limits`, reading.limits),
    ...filled(`${at}/readings/${i}/limits/unit`, reading.limits.unit),
  ]),
  ...limits(`${at}/climate/airTemperature`, of.climate.airTemperature),
  ...limits(`${at}/climate/relativeHumidity`, of.climate.relativeHumidity),
  ...figure(`${at}/layUpWindow/earliestMinutes`, of.layUpWindow.earliestMinutes),
  ...figure(`${at}/layUpWindow/latestMinutes`, of.layUpWindow.latestMinutes),
  ...(of.layUpWindow.earliestMinutes.trim() === ''
    ? []
    : filled(`${at}/layUpWindow/latestMinutes`, of.layUpWindow.latestMinutes)),
];

/**
 * What a schedule lacks to be sent at all, field by field; whether it holds together is for the service to say.
 *
 * @param words says what to do about a fault
 */
export const checkSchedule = ({ layers }: ScheduleDraft, words: (fault: Fault) => string): readonly FieldError[] =>
  layers.flatMap((of, i) => layer(`/layers/${i}`, of)).map(([pointer, fault]) => ({ pointer, detail: words(fault) }));
