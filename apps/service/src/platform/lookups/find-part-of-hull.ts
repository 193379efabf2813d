import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';
import { Unprocessable } from '../refusals.js';

/** A part that is joined to a hull. */
export interface PartOfHull {
  readonly id: string;
  readonly number: string;
  readonly kind: string;
}

/** The parts of a hull, in the order of their numbers. */
export const partsOfHull = (tx: EntityManager, hullId: string): Promise<PartOfHull[]> =>
  tx.query<PartOfHull[]>(
    `select p.root as id, p.number, p.kind from fact.joint j join fact.part p on p.root = j.part_id and ${standing('p')}
     where j.hull_id = $1 and ${standing('j')} order by p.number`,
    [hullId],
  );

/**
 * The part of a hull that is named; the hull molding when none is.
 *
 * @throws Unprocessable `not-in-hull`
 */
export const partOfHull = (parts: readonly PartOfHull[], part: string | undefined, pointer: string): PartOfHull => {
  const found = parts.find(({ number, kind }) => (part === undefined ? kind === 'hull molding' : number === part));
  if (found) return found;
  const named = part === undefined ? 'The hull has no hull molding on record' : `Part ${part} is not in this hull`;
  throw new Unprocessable('not-in-hull', `${named}: name a part of it.`, pointer);
};
