import type { EquipmentView } from '@hull-record/paper';
import type { EquipmentRow } from './load-equipment.js';
import type { PlantTime } from '../platform/papers/plant-time.js';
import type { RecordFacts } from './record-facts.js';

/** Equipment with its check state when it was used last on the hull. */
export const wordEquipment = ({ equipment }: RecordFacts, time: PlantTime): readonly EquipmentView[] =>
  equipment.map((row) => ({
    code: row.code,
    what: `${row.kind}, ${row.description}`,
    lastUsed: time.at(row.last_used),
    ...stateOf(row, time),
  }));

const stateOf = (row: EquipmentRow, time: PlantTime): Pick<EquipmentView, 'state' | 'suspect'> => {
  const unfit = row.next_at !== null && row.next_good === false ? `; found unfit on ${time.at(row.next_at)}` : '';
  if (row.checked_at === null) return { state: `not checked before${unfit}`, suspect: unfit !== '' };
  const found = row.checked_good ? 'good' : 'unfit';
  return {
    state: `${found} on ${time.at(row.checked_at)} (${row.checked_what ?? ''})${unfit}`,
    suspect: unfit !== '' || row.checked_good === false,
  };
};
