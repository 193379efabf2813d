import type { EntityManager } from 'typeorm';
import type { Fact } from '../platform/facts/fact.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { findLots } from '../platform/lots/find-lots.js';
import { NotThere } from '../platform/refusals.js';
import type { ReadingEntity } from './reading.entity.js';

/** What readings are taken of. */
export type ReadKind = ReadingEntity['ofKind'];

/** Something that is read: the root of its record, and the part it is of; a lot is of none. */
export interface Read {
  readonly root: string;
  readonly partId: string | null;
}

const TABLES = { layer: 'layer_record', repair: 'repair', joint: 'joint' } as const;

/**
 * Finds what is read: a layer, repair or joint by its id, a part by its number, a lot by its code or id.
 *
 * @throws NotThere
 */
export const findRead = async (fact: Fact, of: ReadKind, name: string): Promise<Read> => {
  if (of === 'part') {
    const id = await findByCode(fact.tx, 'part', fact.author.plantId, name);
    return { root: id, partId: id };
  }
  if (of === 'lot') {
    const lot = (await findLots(fact.tx, fact.author.plantId, [name], fact.happenedAt)).get(name);
    if (!lot) throw new NotThere('lot', name);
    return { root: lot.id, partId: null };
  }
  const { root, part_id: partId } = await findStanding<Row>(fact.tx, TABLES[of], name);
  return { root, partId };
};

type Row = { id: string; root: string; part_id: string };

/** The part that something read is of; null of a lot. */
export const partOfRead = async (tx: EntityManager, of: ReadKind, root: string): Promise<string | null> => {
  if (of === 'part') return root;
  if (of === 'lot') return null;
  return (await findStanding<Row>(tx, TABLES[of], root)).part_id;
};
