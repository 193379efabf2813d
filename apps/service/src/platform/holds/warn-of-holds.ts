import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { moldStateAt } from '../molds/mold.sql.js';
import { notLifted } from '../store/holds.sql.js';
import { thingWords } from './word-thing.js';

const inForce = (on: string): string => `
  select ${thingWords('h')} || ' is on hold (' || h.kind || '): ' || h.reason as says from fact.hold h
  where ${on} and h.happened_at <= $2 and ${standing('h')} and ${notLifted('h', '$2')} order by h.happened_at, h.id`;

const ON_EQUIPMENT = inForce('h.equipment_id = $1');
const ON_MOLD = inForce(`h.mold_id = $1 and h.mold_state = ${moldStateAt('$1::uuid', '$2')}`);

const warnings = async (fact: Fact, sql: string, root: string, at: Date): Promise<readonly string[]> => {
  const rows = await fact.tx.query<{ says: string }[]>(sql, [root, at]);
  return rows.map(({ says }) => `${says}. Ask quality before you go on: what is made with it waits for the hold.`);
};

/**
 * What to say to whoever works with equipment that was on hold then. Never a nonconformity: the hold reaches what is
 * made with it, and release waits for that.
 */
export const holdsOnEquipment = (fact: Fact, root: string, at: Date = fact.happenedAt): Promise<readonly string[]> =>
  warnings(fact, ON_EQUIPMENT, root, at);

/** Warns whoever begins a part in a mold whose state was on hold then. */
export const warnOfHeldMold = async (fact: Fact, root: string): Promise<void> => {
  for (const says of await warnings(fact, ON_MOLD, root, fact.happenedAt)) fact.warn(says);
};
