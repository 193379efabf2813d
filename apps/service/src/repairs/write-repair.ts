import type { OutsideRepair, RecordRepair, RepairedSpot } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { writeDefect } from '../platform/defects/write-defect.js';
import { nextNumber } from '../platform/marks/marks.js';
import { InvalidRequest } from '../platform/refusals.js';
import { keepText } from '../platform/texts/keep-text.js';
import { totalKg, writeUsed } from '../platform/used/write-used.js';
import { RepairDefectEntity } from './repair-defect.entity.js';
import { RepairEntity } from './repair.entity.js';

/** A repair as it is told: of which part, by whom, and what it answers. */
export interface ToldRepair extends Pick<
  RecordRepair,
  'defects' | 'procedure' | 'taperRatio' | 'grindOutMm' | 'geometry' | 'plies' | 'used'
> {
  readonly partId: string;
  /** Who did it; of an outside repair who recorded it, and stands for it. */
  readonly makers: readonly string[];
  readonly outside: OutsideRepair | null;
  readonly dealerId: string | null;
  readonly note?: string | undefined;
  /** What it answers and nobody reported yet. */
  readonly spots: readonly RepairedSpot[];
}

export interface WrittenRepair {
  readonly mark: string;
  readonly kg: number;
  /** Marks of the defects that its spots became. */
  readonly defects: readonly string[];
}

/** Writes a repair with what it answers and what was used. */
export const writeRepair = async (fact: Fact, told: ToldRepair): Promise<WrittenRepair> => {
  const { partId, procedure, plies, outside, dealerId } = told;
  const answered = await findDefects(fact, partId, told.defects);
  const number = await nextNumber(fact, 'repair', partId);
  const id = await fact.insert(RepairEntity, {
    ...{ partId, number, makers: [...told.makers], procedure, plies, outside, dealerId },
    taperRatio: told.taperRatio ?? null,
    grindOutMm: told.grindOutMm ?? null,
    geometry: told.geometry ?? null,
    note: await keepText(fact, told.note),
  });
  const spots = await writeSpots(fact, partId, told.spots);
  await fact.insertMany(
    RepairDefectEntity,
    [...answered, ...spots.map((spot) => spot.id)].map((defectId) => ({ repairId: id, defectId })),
  );
  const taken = await writeUsed(fact, { kind: 'repair', id, partId }, told.used);
  return { mark: `R${number}`, kg: totalKg(taken), defects: spots.map((spot) => `D${spot.number}`) };
};

const writeSpots = async (fact: Fact, partId: string, spots: readonly RepairedSpot[]) => {
  const written = [];
  for (const [i, spot] of spots.entries()) written.push(await writeDefect(fact, partId, spot, `/spots/${i}`));
  return written;
};

/** Defects of this part, by the ids of any of their versions. */
const findDefects = async (fact: Fact, partId: string, asked: readonly string[]): Promise<readonly string[]> => {
  const ids = asked.map((id) => id.toLowerCase());
  const found = await fact.tx.query<{ asked: string; root: string }[]>(
    `select asked.id as asked, d.root from unnest($1::uuid[]) asked(id)
     join fact.defect any_version on any_version.id = asked.id
     join fact.defect d on d.root = any_version.root and d.part_id = $2 and ${standing('d')}`,
    [ids, partId],
  );
  const roots = new Map(found.map((row) => [row.asked, row.root]));
  const missing = ids.flatMap((id, i) =>
    roots.has(id) ? [] : [{ pointer: `/defects/${i}`, detail: `There is no defect ${id} on this part.` }],
  );
  if (missing.length > 0) throw new InvalidRequest(missing);
  return ids.map((id) => roots.get(id) as string);
};
