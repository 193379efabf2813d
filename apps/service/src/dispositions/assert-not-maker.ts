import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { PLACE_TABLES } from '../platform/places/places.js';
import { Conflict } from '../platform/refusals.js';

const MADE = Object.values(PLACE_TABLES)
  .map((table) => `select from fact.${table} p where p.root = about.place and $2 = any(p.makers) and ${standing('p')}`)
  .join(' union all ');

const MADE_IT = `
  select from (
    select n.about_id as place from fact.nonconformity n where n.root = $1 and ${standing('n')}
    union all select g.of_id from fact.reading g where g.root = $1 and ${standing('g')}) about
  where exists (${MADE})`;

/** @throws Conflict `disposer-is-maker` when who disposes made what it is about: who signs did not do it */
export const assertNotMaker = async (fact: Fact, root: string): Promise<void> => {
  const made = await fact.tx.query<unknown[]>(MADE_IT, [root, fact.author.personId]);
  if (made.length > 0)
    throw new Conflict(
      'disposer-is-maker',
      'Who made it cannot dispose of it: ask another person of quality.',
      '/enteredBy',
    );
};
