import type { ReadingRow } from '../platform/views/making.js';
import type { PlantTime } from '../platform/papers/plant-time.js';
import type { RecordFacts } from './record-facts.js';
import { count } from './word-values.js';

/** Whether a hull was released, and a sentence that says so or what is missing. */
export interface Completeness {
  readonly complete: boolean;
  readonly completeness: string;
}

/** Says whether the record of a hull is complete: released, and otherwise what still stands in the way. */
export const completenessOf = (facts: RecordFacts, time: PlantTime): Completeness => {
  const open = [...toBeMade(facts), ...toBeDecided(facts)];
  const released = facts.life.findLast((row) => row.what === 'released');
  if (released === undefined) {
    return { complete: false, completeness: `Not complete: ${listed([...open, 'the hull is not released'])}.` };
  }
  const since = open.length === 0 ? '' : ` Open since then: ${listed(open)}.`;
  const scrapped = facts.life.some((row) => row.what === 'scrapped') ? ' The hull was scrapped.' : '';
  return { complete: true, completeness: `Complete: released ${time.at(released.happened_at)}.${since}${scrapped}` };
};

const listed = (things: readonly string[]): string =>
  things.length < 2 ? things.join('') : `${things.slice(0, -1).join(', ')} and ${things.at(-1) ?? ''}`;

const some = (n: number, one: string, many: string): readonly string[] => (n === 0 ? [] : [count(n, one, many)]);

const toBeMade = ({ hull, parts, layers, readings }: RecordFacts): readonly string[] => {
  const scheduled = parts.flatMap((part) => part.layers.map((layer) => ({ ...layer, part: part.id })));
  const made = scheduled.flatMap((layer) => {
    const record = layers.find((row) => row.part_id === layer.part && row.schedule_layer_id === layer.id);
    return record === undefined ? [] : [{ layer, record }];
  });
  const unsigned = made.filter(({ layer, record }) => layer.holdPoint !== undefined && record.signed_by === null);
  const unread = made.flatMap(({ layer, record }) =>
    layer.readings.filter(({ what, spots }) => {
      const taken = readings.filter((row) => row.of_id === record.root && row.what === what);
      return new Set(taken.map(({ spot }) => spot)).size < spots;
    }),
  );
  const absent = hull.required_parts.filter((kind) => !parts.some((part) => part.kind === kind));
  return [
    ...absent.map((kind) => `no ${kind} is joined`),
    ...some(scheduled.length - made.length, 'layer is to be made', 'layers are to be made'),
    ...some(unsigned.length, 'hold point is not signed', 'hold points are not signed'),
    ...some(unread.length, 'kind of reading is not complete', 'kinds of reading are not complete'),
  ];
};

const toBeDecided = (facts: RecordFacts): readonly string[] => {
  const readings = facts.readings.filter((row) => isOpen(facts, row));
  const defects = facts.defects.filter(({ state }) => state !== 'repaired' && state !== 'concession');
  const nonconformities = facts.nonconformities.filter(({ id }) => {
    const decided = facts.dispositions.get(id)?.disposition;
    return decided === undefined || decided === 'scrap';
  });
  return [
    ...some(readings.length, 'reading is not inside its limits', 'readings are not inside their limits'),
    ...some(defects.length, 'defect is open', 'defects are open'),
    ...some(nonconformities.length, 'nonconformity is open', 'nonconformities are open'),
    ...facts.lotsNotReleased.map(({ code, state }) => `lot ${code} is ${state}`),
    ...['safety', 'quality'].flatMap((kind) => heldFor(kind, facts)),
  ];
};

/** That it is held is said; on what and why is the builder's business, and in the hold. */
const heldFor = (kind: string, { openHolds }: RecordFacts): readonly string[] => {
  const held = openHolds.filter((hold) => hold.kind === kind).length;
  return some(held, `hold for ${kind} is open on it`, `holds for ${kind} are open on it`);
};

/** As for release: neither under concession, nor reworked and read again inside at the same spot. */
const isOpen = ({ readings, dispositions }: RecordFacts, row: ReadingRow): boolean => {
  if (row.verdict !== 'outside' && row.verdict !== 'cannot be judged') return false;
  const decided = dispositions.get(row.root)?.disposition;
  if (decided === 'use as is') return false;
  if (decided !== 'rework' && decided !== 'repair') return true;
  return !readings.some(
    (again) =>
      again.of_id === row.of_id &&
      again.what === row.what &&
      again.spot === row.spot &&
      again.verdict === 'inside' &&
      again.happened_at > row.happened_at,
  );
};
