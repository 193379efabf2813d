import type { Climate, PartView } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { figure, span, unitSign } from '../platform/words.js';

type Layer = PartView['layers'][number];
type Measured = { readonly value: number; readonly unit: string };

/** What a layer is, and when, by whom and in what climate it was made. */
export const layerWords = ({ scheduled, demand, record }: Layer): Child => [
  h(
    'p',
    { class: record === null ? 'name' : 'name b' },
    h('span', { class: 'n' }, scheduled.code),
    ` ${scheduled.name}`,
  ),
  scheduled.plies.length === 0 ? null : h('p', {}, scheduled.plies.join(', ')),
  scheduled.zone === 'whole part' ? null : h('p', {}, `Zone: ${scheduled.zone}`),
  demand === null ? null : h('p', { class: 'note' }, demandWords(demand)),
  record === null
    ? null
    : h(
        'p',
        { class: 'note soft' },
        span(record.startedAt, record.endedAt),
        `, by ${record.doneBy.join(', ')}; entered by ${record.enteredBy}. `,
        record.climate === null ? null : climateWords(record.climate),
        record.corrected ? 'Corrected; the earlier version is kept.' : null,
      ),
  record === null || record.note === null ? null : h('p', { class: 'note' }, record.note),
];

/** What the layer is to become and to take, without waste. */
const demandWords = ({ thicknessMm, glassKg, resinKg }: NonNullable<Layer['demand']>): string =>
  [
    `By schedule ${figure(thicknessMm, 3)} mm`,
    ...(glassKg === null ? [] : [`glass ${figure(glassKg, 3)} kg`]),
    ...(resinKg === null ? [] : [`resin ${figure(resinKg, 3)} kg`]),
  ].join(', ');

const climateWords = ({ airTemperature, moldTemperature, relativeHumidity }: Climate): string => {
  const words = (name: string, of: Measured | undefined): readonly string[] =>
    of === undefined ? [] : [`${name} ${of.value} ${unitSign(of.unit)}`];
  const all = [
    ...words('air', airTemperature),
    ...words('mold', moldTemperature),
    ...words('humidity', relativeHumidity),
  ];
  return all.length === 0 ? '' : `${all.join(', ')}. `.replace(/^./, (first) => first.toUpperCase());
};
