import type { HullMapView, LayerView, RepairOrderView } from '@hull-record/paper';
import { CAUTIONS } from '@hull-record/trade';
import type { PlantTime } from '../../../platform/papers/plant-time.js';
import { MARKS, SEEN_FROM } from '../../word-defects.js';
import { hatchOf, pliesOf, signatureOf } from '../../word-layer.js';
import type { Pictures } from '../../word-photos.js';
import { wordUsed } from '../../word-used.js';
import { wordPart } from '../find-part.js';
import { wordDefectsOf } from '../word-defects-of.js';
import { sentence, wordPaper } from '../../../platform/papers/word-paper.js';
import type { RepairOrderFacts } from './repair-order-facts.js';

/** Words an order to repair defects of a part. */
export const wordRepairOrder = (facts: RepairOrderFacts, pictures: Pictures): RepairOrderView => {
  const { part, plant } = facts.found;
  const { paper, time } = wordPaper(plant, facts.newest, null);
  return {
    ...paper,
    part: wordPart(facts.found),
    asked: facts.all
      ? 'All defects of the part that were open at the moment of this paper and that no repair waits to be accepted for.'
      : 'The defects that were asked for; the part may have others.',
    defects: wordDefectsOf(facts.defects, { ...facts, part }, time, pictures),
    map: mapOf(facts),
    layers: layersOf(facts, time),
    cautions: (['repair', 'mixing', 'laminating', 'grinding'] as const).map((work) => ({
      work: sentence(work),
      says: CAUTIONS[work],
    })),
  };
};

const mapOf = ({ found: { part }, defects }: RepairOrderFacts): HullMapView | undefined =>
  part.skin === null || defects.length === 0
    ? undefined
    : {
        skin: part.skin,
        seenFrom: SEEN_FROM[part.kind] ?? 'outside, from above',
        marks: defects.map(({ mark, place, state }) => ({ mark, place, state: MARKS[state] })),
      };

/** Layers outside in with plies and lots; who made them and what was read stands in the build record. */
const layersOf = (facts: RepairOrderFacts, time: PlantTime): readonly LayerView[] =>
  facts.found.part.layers.map((layer, i) => {
    const record = facts.records.find((row) => row.schedule_layer_id === layer.id);
    return {
      ...{ position: String(i + 1), code: layer.code, name: layer.name, holdPoint: layer.holdPoint ?? null },
      ...{ hatch: hatchOf(facts, layer), plies: pliesOf(facts, layer) },
      ...{ state: record === undefined ? 'to come' : 'made', doneBy: record?.done_by ?? [] },
      when: record === undefined ? null : time.span(record.started_at, record.ended_at),
      used: record === undefined ? [] : wordUsed(facts, record.root),
      signature: record === undefined ? null : signatureOf(record, time),
      ...{ enteredBy: null, climate: null, note: null, readings: [], verdicts: [], corrected: [] },
    };
  });
