import type { EntityManager } from 'typeorm';
import type { PaperPart } from '@hull-record/paper';
import { standing } from '../../platform/facts/standing.js';
import { NotThere } from '../../platform/refusals.js';
import { loadParts, NOW, type PartRow } from '../../platform/views/making.js';
import { loadScrapped } from '../load-scrapped.js';
import { plantOf, type PlantRow } from '../../platform/papers/plant-of.js';
import { sentence } from '../../platform/papers/word-paper.js';

/** A part that a paper is about, with its plant, and the HIN of its hull where it has one. */
export interface FoundPart {
  readonly part: PartRow;
  readonly plant: PlantRow;
  readonly hin: string | null;
  /** Why it was scrapped; null while it is not. */
  readonly scrapped: string | null;
}

/**
 * Finds a part by number or id.
 *
 * @throws NotThere
 */
export const findPart = async (tx: EntityManager, number: string): Promise<FoundPart> => {
  const [found] = await tx.query<{ id: string }[]>(
    `select p.id from fact.part p where (p.number = $1 or p.id::text = lower($1)) and ${standing('p')} order by p.recorded_at limit 1`,
    [number],
  );
  const [part] = found ? await loadParts(tx, [found.id], NOW) : [];
  if (!part) throw new NotThere('part', number);
  const [hin] = await tx.query<{ as_printed: string }[]>(
    `select n.as_printed from fact.hull_number n where n.hull_id = $1 and n.kind = 'HIN' and ${standing('n')}
     order by n.recorded_at desc, n.id limit 1`,
    [part.hull_id],
  );
  const scrapped = (await loadScrapped(tx, [part.id], NOW)).get(part.id) ?? null;
  return { part, plant: await plantOf(tx, 'part', part.id), hin: hin?.as_printed ?? null, scrapped };
};

/** Words a part as papers of the shop name it. */
export const wordPart = ({ part, hin, scrapped }: FoundPart): PaperPart => ({
  ...{ number: part.number, kind: sentence(part.kind), hull: part.hull, hin, mold: part.mold },
  model: `${part.model_name} (${part.model})`,
  schedule: `${part.model} ${part.kind}, version ${part.version}`,
  scrapped,
});
