import { CorrectionEntity } from '../facts/correction.entity.js';
import type { Fact } from '../facts/fact.js';
import { insertVersion } from '../facts/new-version.js';
import { childId } from '../ids.js';
import { UsedEntity } from '../used/used.entity.js';
import type { DrawnFrom } from './drawn-row.js';
import { forgetUnidentified } from './forget-unidentified.js';
import { LotInputEntity } from './lot-input.entity.js';

/** Tables of what was drawn from lots. */
export type DrawnTable = 'used' | 'lot_input';

/** Corrects of which lot something was drawn; amount, time and place stay. */
export const redraw = async (
  fact: Fact,
  table: DrawnTable,
  { id, lot, ...drawn }: { readonly id: string; readonly lot: string } & Partial<DrawnFrom>,
  reason: string,
): Promise<void> => {
  const replacement = childId(fact.id, `drawn of another lot/${id}`);
  await fact.insert(CorrectionEntity, { corrects: id, correctsTable: table, replacement, reason });
  if (table === 'used') await insertVersion(fact, UsedEntity, id, replacement, { ...drawn, lotId: lot });
  else await insertVersion(fact, LotInputEntity, id, replacement, { ...drawn, inputId: lot });
  await forgetUnidentified(fact, table, id, reason);
};
