import type { HoldPointsView, HoldPointView, NonconformityView } from '@hull-record/paper';
import type { NonconformityRow } from '../../../platform/views/faults.js';
import type { LayerRow, PartRow } from '../../../platform/views/making.js';
import { verdictsOf } from '../../../platform/views/verdicts.js';
import type { PlantTime } from '../../../platform/papers/plant-time.js';
import { wordDisposition } from '../../word-judgements.js';
import { climateOf, signatureOf } from '../../word-layer.js';
import { count } from '../../word-values.js';
import { wordPart } from '../find-part.js';
import { wordDefectsOf } from '../word-defects-of.js';
import { sentence, wordPaper } from '../../../platform/papers/word-paper.js';
import { wordReadings } from '../../word-readings.js';
import type { HoldPointFacts } from './hold-points-facts.js';

type Scheduled = PartRow['layers'][number];

/** Words the hold points of a part, outside in. */
export const wordHoldPoints = (facts: HoldPointFacts): HoldPointsView => {
  const { part, plant } = facts.found;
  const { paper, time } = wordPaper(plant, facts.newest, null);
  const open = openDefects(facts);
  return {
    ...paper,
    part: wordPart(facts.found),
    holdPoints: part.layers.flatMap((layer, i) =>
      layer.holdPoint === undefined ? [] : [wordHoldPoint(facts, layer, i + 1, time)],
    ),
    nonconformities: facts.nonconformities
      .filter((row) => isOpen(facts, row) && !facts.aboutLayer.has(row.id))
      .map((row) => wordNonconformity(facts, row, time)),
    defects: wordDefectsOf(
      open.filter(({ layer }) => layer === null),
      { ...facts, part },
      time,
    ),
  };
};

const wordHoldPoint = (facts: HoldPointFacts, layer: Scheduled, position: number, time: PlantTime): HoldPointView => {
  const { part } = facts.found;
  const record = facts.records.find((row) => row.schedule_layer_id === layer.id);
  const defects = openDefects(facts).filter((row) => row.layer === layer.code);
  const head = { name: layer.holdPoint ?? '', layer: `layer ${position}, ${layer.name} (${layer.code})` };
  const found = wordDefectsOf(defects, { ...facts, part }, time);
  if (record === undefined) {
    const nothing = { made: null, readings: [], missing: [], verdicts: [], nonconformities: [], signature: null };
    return { ...head, ...nothing, defects: found };
  }
  return {
    ...head,
    made: {
      when: time.span(record.started_at, record.ended_at),
      doneBy: record.done_by,
      enteredBy: record.entered_by,
      climate: climateOf(layer, record),
    },
    readings: wordReadings(facts, record.root, time),
    missing: missingOf(facts, layer, record),
    verdicts: verdictsOf(facts.verdicts, record.root),
    nonconformities: facts.nonconformities
      .filter((row) => isOpen(facts, row) && facts.aboutLayer.get(row.id) === record.root)
      .map((row) => wordNonconformity(facts, row, time)),
    defects: found,
    signature: signatureOf(record, time),
  };
};

/** Readings that the schedule asks for and that were not taken at as many spots. */
const missingOf = ({ readings }: HoldPointFacts, layer: Scheduled, { root }: LayerRow): readonly string[] =>
  layer.readings.flatMap(({ what, spots }) => {
    const read = new Set(readings.filter((row) => row.of_id === root && row.what === what).map(({ spot }) => spot));
    return read.size >= spots ? [] : [`${sentence(what)}: ${read.size} of ${count(spots, 'spot')} read.`];
  });

const openDefects = ({ defects }: HoldPointFacts): HoldPointFacts['defects'] =>
  defects.filter(({ state }) => state === 'open' || state === 'repair to be accepted');

/** As the list of nonconformities has it: open until disposed of; scrap settles nothing by itself. */
const isOpen = ({ dispositions }: HoldPointFacts, { id }: NonconformityRow): boolean => {
  const decided = dispositions.get(id)?.disposition;
  return decided === undefined || decided === 'scrap';
};

const wordNonconformity = (
  { dispositions }: HoldPointFacts,
  row: NonconformityRow,
  time: PlantTime,
): NonconformityView => {
  const decided = dispositions.get(row.id);
  return {
    ...{ rule: sentence(row.rule.replaceAll('-', ' ')), detail: row.detail, when: time.at(row.happened_at) },
    disposition: decided === undefined ? null : wordDisposition(decided, time),
  };
};
