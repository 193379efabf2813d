import { CorrectionEntity } from '../facts/correction.entity.js';
import type { Fact } from '../facts/fact.js';
import { insertVersion } from '../facts/new-version.js';
import { childId } from '../ids.js';
import { UsedEntity } from '../used/used.entity.js';
import { LotInputEntity } from './lot-input.entity.js';

/** Tables of what was drawn from lots. */
export type DrawnTable = 'used' | 'lot_input';

/** Corrects of which lot something was drawn; amount, time and place stay. */
export const redraw = async (
  fact: Fact,
  table: DrawnTable,
  { id, lot }: { readonly id: string; readonly lot: string },
  reason: string,
): Promise<void> => {
  const replacement = childId(fact.id, `drawn of another lot/${id}`);
  await fact.insert(CorrectionEntity, { corrects: id, correctsTable: table, replacement, reason });
  if (table === 'used') await insertVersion(fact, UsedEntity, id, replacement, { lotId: lot });
  else await insertVersion(fact, LotInputEntity, id, replacement, { inputId: lot });
};
