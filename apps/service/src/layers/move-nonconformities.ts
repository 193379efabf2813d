import { CorrectionEntity } from '../platform/facts/correction.entity.js';
import type { Fact } from '../platform/facts/fact.js';
import { insertVersion } from '../platform/facts/new-version.js';
import { NonconformityEntity } from '../platform/facts/nonconformity.entity.js';
import { standing } from '../platform/facts/standing.js';
import { childId } from '../platform/ids.js';

const REASON = 'The layer it is about was made on another part.';

/** Nonconformities about a layer go with it to the part on which it was really made, with what was decided about them. */
export const moveNonconformities = async (fact: Fact, layerRoot: string, partId: string): Promise<void> => {
  const found = await fact.tx.query<{ id: string }[]>(
    `select c.id from fact.nonconformity c where c.about_id = $1 and c.part_id <> $2 and ${standing('c')} order by c.id`,
    [layerRoot, partId],
  );
  for (const { id } of found) {
    const replacement = childId(fact.id, `moves/${id}`);
    await fact.insert(CorrectionEntity, {
      corrects: id,
      correctsTable: 'nonconformity',
      replacement,
      reason: REASON,
    });
    await insertVersion(fact, NonconformityEntity, id, replacement, { partId });
  }
};
