import type { Fact } from '../facts/fact.js';
import { openNewlyBroken } from '../facts/open-newly-broken.js';
import { standing } from '../facts/standing.js';
import { drawsOf, type Draw } from './draws.sql.js';
import { judgeDraws } from './judge-draws.js';

/**
 * Lots that a correction says something new about without changing what anything is made of: their state, retest, hold
 * or container. When a lift or an acceptance never was, the hold or rejection went on.
 */
const TOUCHED = `
  select s.lot_id as id from fact.lot_state s where s.id = any($1)
  union select t.lot_id from fact.lot_retest t where t.id = any($1)
  union select h.lot_id from fact.hold h where h.id = any($1)
  union select c.lot_id from fact.container c where c.id = any($1)
  union select h.lot_id from fact.hold_lift f join fact.hold h on h.root = f.hold_id where f.id = any($1)
  union select c.lot_id from fact.container_fact f join fact.container c on c.root = f.container_id where f.id = any($1)`;

/** Facts that say how a lot or container stood from then on. What is lifted or accepted breaks nothing. */
const STATES = ['lot_state', 'lot_retest', 'hold', 'container_fact'] as const;

/** Lots that these facts say something about. */
const SAID = `
  select s.lot_id as id from fact.lot_state s where s.id = any($1)
  union select t.lot_id from fact.lot_retest t where t.id = any($1)
  union select h.lot_id from fact.hold h where h.id = any($1)
  union select c.lot_id from fact.container_fact f join fact.container c on c.root = f.container_id and ${standing('c')}
    where f.id = any($1) and f.what = 'rejected'`;

/**
 * Judges again what corrections, and what is said late of a lot, bring to light. Opens what was not known to be broken,
 * in the words in which it would have been opened on time; what is no longer so quality disposes of.
 *
 * @param remade lots whose making a correction changed, and all that is made of them; none when a job judges them later
 */
export const judgeAgain = async (fact: Fact, remade: readonly string[]): Promise<void> => {
  await open(fact, await drawsOfCorrected(fact, remade));
  await open(fact, await drawsSince(fact));
};

/** What was drawn of a lot that is known better now, and what was drawn of another lot than was thought. */
const drawsOfCorrected = async (fact: Fact, remade: readonly string[]): Promise<readonly Draw[]> => {
  const corrections = fact.wrote('correction').flatMap(({ values }) => [values['corrects'], values['replacement']]);
  const versions = corrections.filter((id) => id !== null);
  if (versions.length === 0) return [];
  const touched = await fact.tx.query<{ id: string }[]>(TOUCHED, [versions]);
  return drawsOf(fact.tx, { lots: [...remade, ...touched.map(({ id }) => id)], versions });
};

/** What was drawn of a lot, or of a container of it, since it stood as is said now. */
const drawsSince = async (fact: Fact): Promise<readonly Draw[]> => {
  const ids = STATES.flatMap((table) => fact.wrote(table).map(({ id }) => id));
  const said = ids.length === 0 ? [] : await fact.tx.query<{ id: string }[]>(SAID, [ids]);
  if (said.length === 0) return [];
  return drawsOf(fact.tx, { lots: said.map(({ id }) => id), versions: [], since: fact.happenedAt });
};

const open = async (fact: Fact, draws: readonly Draw[]): Promise<void> => {
  await openNewlyBroken(fact, await judgeDraws(fact.tx, fact.author.plantId, draws));
};
