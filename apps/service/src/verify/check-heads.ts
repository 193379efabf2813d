import { checkHead, headHash, Malformed, readHead, type SignedTreeHead } from '@hull-record/evidence';
import type { EntityManager } from 'typeorm';
import { fault, type TamperFault } from './fault.js';

interface HeadRow {
  readonly number: number;
  readonly size: string;
  readonly signedAt: Date;
  readonly line: string;
}

/** The heads that the service signed for a plant, by their number. */
export const loadHeads = (tx: EntityManager, plantId: string): Promise<HeadRow[]> =>
  tx.query(
    'select number, size::text as size, signed_at as "signedAt", line from fact.tree_head where plant_id = $1 order by number',
    [plantId],
  );

const read = (line: string): SignedTreeHead | string => {
  try {
    return readHead(line);
  } catch (error) {
    if (error instanceof Malformed) return error.message;
    throw error;
  }
};

/**
 * What speaks against the kept heads: in themselves, in their order, and against the tree as it is now.
 *
 * @param roots the root of the tree as it is now, at each size that a head was signed over
 * @param own ids of the keys of the service
 */
export const checkHeads = (
  plant: string,
  rows: readonly HeadRow[],
  roots: ReadonlyMap<number, string>,
  own: ReadonlySet<string>,
): readonly TamperFault[] => {
  const found: TamperFault[] = [];
  let previous: string | null = null;
  let [number, fitsTo] = [0, 0];
  for (const row of rows) {
    const say = (what: TamperFault['what'], why: string): void =>
      void found.push(fault(what, 'fact.tree_head', `number ${row.number} of ${plant}`, why));
    number += 1;
    if (row.number !== number)
      found.push(fault('removed', 'fact.tree_head', `number ${number} of ${plant}`, 'a later one is there.'));
    number = row.number;
    const head = read(row.line);
    if (typeof head === 'string') {
      say('changed', head);
      continue;
    }
    const inItself = checkHead(head);
    if (inItself !== null) say('changed', inItself.why);
    else if (head.plant !== plant || head.size !== Number(row.size) || head.at !== row.signedAt.toISOString())
      say('changed', 'its columns do not say what its line says.');
    else if (!own.has(head.keyId)) say('changed', `its key ${head.keyId} is none of the keys of this service.`);
    else if (previous !== null && head.previous !== previous) say('reordered', 'it does not name the one before it.');
    const root = roots.get(head.size);
    if (root === head.root) fitsTo = head.size;
    else if (inItself === null)
      found.push(
        fault(
          'changed',
          'fact.journal',
          `among entries ${fitsTo} to ${head.size - 1} of ${plant}`,
          `they are not what head ${row.number} was signed over.`,
        ),
      );
    previous = headHash(head);
  }
  return found;
};
