import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';

/** SQL: what a hold is on, in words. */
export const thingWords = (h: string): string => `(case
  when ${h}.container_id is not null then (select 'Container ' || c.label from fact.container c where c.root = ${h}.container_id and ${standing('c')} limit 1)
  when ${h}.lot_id is not null then (select 'Lot ' || l.code from fact.lot l where l.root = ${h}.lot_id and ${standing('l')} limit 1)
  when ${h}.equipment_id is not null then (select 'Equipment ' || e.code from fact.equipment e where e.root = ${h}.equipment_id and ${standing('e')} limit 1)
  when ${h}.mold_id is not null then 'State ' || ${h}.mold_state || ' of mold ' || (select m.code from fact.mold m where m.root = ${h}.mold_id and ${standing('m')} limit 1)
  else 'What was made in a period' end)`;

/** Words what a hold is on. */
export const wordThing = async (tx: EntityManager, hold: string): Promise<string> => {
  const [row] = await tx.query<[{ thing: string }]>(
    `select ${thingWords('h')} as thing from fact.hold h where h.root = $1 and ${standing('h')}`,
    [hold],
  );
  return row.thing;
};
