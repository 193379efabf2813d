import type { MaterialView, PartView } from '@hull-record/contracts';
import { h, s, type Child } from '../platform/dom.js';
import { empty } from '../platform/page.js';
import { table, type Column } from '../platform/table.js';
import { mark, stamp, tape } from '../marks/mark.js';
import { HATCH_WORDS, layerHatch } from '../marks/layer-hatch.js';
import { moment } from '../platform/words.js';
import { layerWords } from './layer-words.js';
import { nextLayer } from './next-layer.js';
import { readingsOf } from './readings.js';
import { verdictsOf } from './verdicts.js';
import { usedList } from './used.js';

type Layer = PartView['layers'][number];

/**
 * The laminate of a part as a section, outside in: one hatched band a layer, and beside it the layer's record.
 *
 * Bands are as high as their words, not to scale, and the drawing says so.
 */
export const laminateSection = ({ layers, number }: PartView, materials: readonly MaterialView[]): Child => {
  if (layers.length === 0) return empty('The schedule of this part has no layers.');
  const drawn = table(`Laminate of ${number}, outside first`, columns(materials, layers), layers);
  drawn.classList.add('laminate');
  return [
    drawn,
    h(
      'p',
      { class: 'note soft' },
      'Inside of the part below. Bands are not to scale. Hatch follows the role of the material; mat or cloth is read from the names of the plies.',
    ),
  ];
};

const readAndJudged = ({ record, scheduled }: Layer): Child => [
  readingsOf(record?.readings ?? [], scheduled.readings),
  verdictsOf(record?.verdicts ?? []),
];

const columns = (materials: readonly MaterialView[], layers: readonly Layer[]): readonly Column<Layer>[] => [
  { head: 'Section', cell: (layer) => band(layer, materials), class: 'band' },
  { head: 'Layer', cell: layerWords, names: true },
  { head: 'Lots used', cell: ({ record }) => (record === null ? '–' : usedList(record.used)) },
  { head: 'Readings', cell: readAndJudged },
  { head: 'State', cell: (layer) => [state(layer), waitsForNext(layer, layers)] },
];

const band = ({ scheduled, record }: Layer, materials: readonly MaterialView[]): Child => {
  const hatch = layerHatch(scheduled, materials);
  const made = record === null ? 'to come' : 'made';
  return s(
    'svg',
    {
      class: record === null ? 'later' : 'full',
      role: 'img',
      'aria-label': `Band of ${scheduled.name}: ${HATCH_WORDS[hatch]}, ${made}.`,
    },
    s('rect', { width: '100%', height: '100%', fill: `url(#h-${hatch})` }),
    s('rect', { class: 'edge', width: '100%', height: '100%' }),
  );
};

const state = ({ scheduled: { holdPoint }, record }: Layer): Child => {
  if (record === null)
    return [mark('to come', 'to come'), holdPoint ? h('p', { class: 'note soft' }, `ends in ${holdPoint}`) : null];
  const made = mark('made', 'made');
  if (!holdPoint) return made;
  const { signature } = record;
  if (signature === null) return [made, h('p', {}, tape(`${holdPoint}, not signed`))];
  return [
    made,
    h('p', {}, stamp(`${holdPoint} · ${signature.by} · `, moment(signature.at))),
    identity(signature.identity),
  ];
};

/** The time left for the next layer, while none that goes on this one is made. */
const waitsForNext = ({ scheduled, record }: Layer, layers: readonly Layer[]): Child => {
  const window = record?.nextLayer;
  const next = layers.filter((layer) => layer.scheduled.predecessors.includes(scheduled.code));
  return window && next.length > 0 && next.every((layer) => layer.record === null) ? nextLayer(window) : null;
};

const identity = (how: string): Child =>
  how === 'stated' ? h('p', { class: 'note soft' }, 'who signed is stated, not proved') : null;
