import type { HatchKind, LayerView } from '@hull-record/paper';
import type { LayerRow, PartRow } from '../platform/views/making.js';
import { verdictsOf } from '../platform/views/verdicts.js';
import type { PlantTime } from '../platform/papers/plant-time.js';
import type { RecordFacts } from './record-facts.js';
import { wordCorrectionsOf } from './word-corrections.js';
import { identity } from './word-judgements.js';
import { wordReadings } from './word-readings.js';
import { wordUsed } from './word-used.js';
import { climate, limits, unit } from './word-values.js';

type Scheduled = PartRow['layers'][number];

/** The layers of a part outside in: as made, or as scheduled while they are to come. */
export const wordLayers = (facts: RecordFacts, part: PartRow, time: PlantTime): readonly LayerView[] =>
  part.layers.map((scheduled, i) => {
    const record = facts.layers.find((row) => row.part_id === part.id && row.schedule_layer_id === scheduled.id);
    return {
      position: String(i + 1),
      code: scheduled.code,
      name: scheduled.name,
      hatch: hatchOf(facts, scheduled),
      plies: pliesOf(facts, scheduled),
      holdPoint: scheduled.holdPoint ?? null,
      ...(record === undefined ? TO_COME : made(facts, scheduled, record, time)),
    };
  });

const TO_COME = {
  state: 'to come' as const,
  ...{ when: null, doneBy: [], enteredBy: null, climate: null, note: null },
  ...{ used: [], readings: [], verdicts: [], signature: null, corrected: [] },
};

const made = (facts: RecordFacts, scheduled: Scheduled, record: LayerRow, time: PlantTime) => ({
  state: 'made' as const,
  when: time.span(record.started_at, record.ended_at),
  doneBy: record.done_by,
  enteredBy: record.entered_by,
  climate: climateOf(scheduled, record),
  note: record.note,
  used: wordUsed(facts, record.root),
  readings: wordReadings(facts, record.root, time),
  verdicts: verdictsIn(facts, record),
  signature: signatureOf(record, time),
  corrected: wordCorrectionsOf(facts.corrections, record.root, time),
});

/** Verdicts on the layer, then those on the buckets used in it. */
const verdictsIn = ({ verdicts, used }: RecordFacts, { root }: LayerRow): LayerView['verdicts'] => {
  const lots = new Map(used.filter((row) => row.into_id === root).map((row) => [row.lot_id, row.lot]));
  const ofLots = [...lots].flatMap(([id, lot]) =>
    verdictsOf(verdicts, id).map((verdict) => ({ ...verdict, topic: `${verdict.topic} of ${lot}` })),
  );
  return [...verdictsOf(verdicts, root), ...ofLots];
};

export const signatureOf = (record: LayerRow, time: PlantTime): string | null =>
  record.signed_by === null || record.signed_at === null
    ? null
    : `signed by ${record.signed_by}, ${time.at(record.signed_at)}; ${identity(record.signature_identity)}`;

export const climateOf = ({ climate: set }: Scheduled, record: LayerRow): string | null => {
  const scheduled = [
    ...(set?.airTemperature ? [`air ${limits(set.airTemperature)}`] : []),
    ...(set?.relativeHumidity ? [`relative humidity ${limits(set.relativeHumidity)}`] : []),
  ];
  const measured = climate(record.climate);
  if (scheduled.length === 0) return measured;
  return `${measured ?? 'not recorded'}; limits of the schedule: ${scheduled.join(', ')}`;
};

/** The plies as scheduled, or where none are written the materials and their targets; and the zone, unless it is all. */
export const pliesOf = (facts: Pick<RecordFacts, 'materials'>, { plies, materials, zone }: Scheduled): string => {
  const materialsText = materials.map(({ material, target }) => {
    const name = facts.materials.get(material)?.name ?? material;
    return target === undefined ? name : `${name}, target ${target.quantity} ${unit(target.unit)}`;
  });
  const words = plies.length > 0 ? plies.join(' + ') : materialsText.join('; ');
  return zone === 'whole part' ? words : `${words}; zone: ${zone}`;
};

/** Reinforcements that are woven or stitched; mat is the rest. */
const WOVEN = /woven|cloth|stitched|biax|triax|quadrax|unidirectional/i;

export const hatchOf = (facts: Pick<RecordFacts, 'materials'>, { plies, materials }: Scheduled): HatchKind => {
  const found = materials.flatMap(({ material }) => facts.materials.get(material) ?? []);
  const has = (role: string): boolean => found.some((material) => material.role === role);
  if (has('core')) return 'core';
  if (has('board')) return 'board';
  if (has('glass'))
    return [...plies, ...found.map(({ name }) => name)].some((text) => WOVEN.test(text)) ? 'woven' : 'mat';
  if (has('putty') || has('bonding paste')) return 'putty';
  return has('gel coat') ? 'gel coat' : 'other';
};
