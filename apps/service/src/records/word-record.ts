import type { BuildRecordView, PartView } from '@hull-record/paper';
import type { PartRow } from '../platform/views/making.js';
import { completenessOf } from './completeness.js';
import { plantTime, type PlantTime } from '../platform/papers/plant-time.js';
import type { RecordFacts } from './record-facts.js';
import { cautionsOf, sourcesOf } from './sources.js';
import { wordCorrections } from './word-corrections.js';
import { wordDefects, wordMap, wordRepairs, wordTouchUps } from './word-defects.js';
import { wordEquipment } from './word-equipment.js';
import { wordHin, wordJoints, wordLife } from './word-hull.js';
import { wordNonconformities } from './word-judgements.js';
import type { Pictures } from './word-photos.js';
import { wordReadings } from './word-readings.js';
import { wordLayers } from './word-layer.js';

/** Words the facts of a hull as the paper prints them, with times in the time zone of the plant. */
export const wordRecord = (facts: RecordFacts, pictures: Pictures): BuildRecordView => {
  const { hull, newest } = facts;
  const time = plantTime(hull.time_zone);
  return {
    plantName: hull.plant,
    hullNumber: hull.number,
    hin: wordHin(facts),
    model: `${hull.model_name} (${hull.model})`,
    stateAsOf: { instant: newest.toISOString(), text: time.at(newest) },
    ...completenessOf(facts, time),
    lifeFacts: wordLife(facts, time),
    parts: facts.parts.map((part) => wordPart(facts, part, time, pictures)),
    joints: wordJoints(facts, time),
    nonconformities: wordNonconformities(facts, null, time),
    cut: '',
    equipment: wordEquipment(facts, time),
    corrections: wordCorrections(facts.corrections, time),
    cautions: cautionsOf(facts),
    sources: sourcesOf(facts),
  };
};

const wordPart = (facts: RecordFacts, part: PartRow, time: PlantTime, pictures: Pictures): PartView => ({
  number: part.number,
  kind: part.kind.charAt(0).toUpperCase() + part.kind.slice(1),
  mold: moldOf(part, facts, time),
  schedule: `${part.model} ${part.kind}, version ${part.version}`,
  joined: joinedOf(part, time, facts.scrapped.get(part.id)),
  readings: wordReadings(facts, part.id, time),
  layers: wordLayers(facts, part, time),
  defects: wordDefects(facts, part, time, pictures),
  repairs: [...wordRepairs(facts, part, time), ...wordTouchUps(facts, part, time)],
  nonconformities: wordNonconformities(facts, part.id, time),
  map: wordMap(facts, part),
});

/** The mold, with its state and care when the part was begun in it. */
const moldOf = ({ id, mold }: PartRow, { molds }: RecordFacts, time: PlantTime): string => {
  const then = molds.get(id);
  if (then === undefined) return mold;
  const care = then.cared_at === null ? 'no care of it on record' : `${then.care ?? ''} ${time.at(then.cared_at)}`;
  return `${mold}, state ${then.state}, pull ${then.pull}; ${care}`;
};

const joinedOf = (
  { kind, joined_at: at, joined_by: by }: PartRow,
  time: PlantTime,
  scrapped: string | undefined,
): string | null => {
  if (at === null) return null;
  const joined =
    kind === 'hull molding' ? `the hull itself, started ${time.at(at)}` : `${time.at(at)}, by ${by.join(', ')}`;
  return scrapped === undefined ? joined : `${joined}; SCRAPPED: ${scrapped}`;
};
