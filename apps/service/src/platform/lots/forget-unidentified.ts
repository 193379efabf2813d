import { CorrectionEntity } from '../facts/correction.entity.js';
import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { childId } from '../ids.js';

/** The unidentified lot that a draw was of, when nothing is drawn of it any more. */
const LEFT = (table: 'used' | 'lot_input', column: 'lot_id' | 'input_id'): string => `
  select u.id, u.root, u.code from fact.${table} d join fact.lot u on u.root = d.${column} and u.origin = 'unidentified' and ${standing('u')}
  where d.id = $1
    and not exists (select from fact.used x where x.lot_id = u.root and ${standing('x')})
    and not exists (select from fact.lot_input x where x.input_id = u.root and ${standing('x')})`;

/** That it could not be named: no longer so. */
const SAID = `
  select n.id from fact.nonconformity n
  where n.rule = 'unidentified-material' and strpos(n.detail, $1) > 0 and ${standing('n')} order by n.id`;

/** Withdraws unidentified material once it is known what all of it was, and that nobody could name it. */
export const forgetUnidentified = async (
  fact: Fact,
  table: 'used' | 'lot_input',
  drawId: string,
  reason: string,
): Promise<void> => {
  const [lot] = await fact.tx.query<{ id: string; root: string; code: string }[]>(
    LEFT(table, table === 'used' ? 'lot_id' : 'input_id'),
    [drawId],
  );
  if (!lot) return;
  const withdraw = (id: string, correctsTable: string): Promise<string> =>
    fact.insert(CorrectionEntity, {
      ...{ id: childId(fact.id, `known now/${id}`), corrects: id, correctsTable, replacement: null, reason },
    });
  await withdraw(lot.id, 'lot');
  for (const { id } of await fact.tx.query<{ id: string }[]>(SAID, [lot.code])) await withdraw(id, 'nonconformity');
};
