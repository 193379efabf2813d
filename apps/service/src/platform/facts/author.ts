import type { EntityManager } from 'typeorm';
import { UnknownBadge, UnknownDevice } from '../refusals.js';
import type { Author } from './fact.js';
import { standing } from './standing.js';

/**
 * Finds who states to record this, and on which device. The device belongs to a plant, and so does the fact.
 *
 * @throws UnknownBadge, UnknownDevice
 */
export const findAuthor = async (tx: EntityManager, badge: string, device: string): Promise<Author> => {
  const [personId] = await findPeople(tx, [badge], () => '/enteredBy');
  const [found] = await tx.query<{ id: string; plant_id: string }[]>(
    `select d.root as id, d.plant_id from fact.device d where d.code = $1 and ${standing('d')}`,
    [device],
  );
  if (!found) throw new UnknownDevice(device);
  return { plantId: found.plant_id, personId: personId as string, deviceId: found.id, badge };
};

/**
 * Finds people by badge, in any case of letters, in the order asked, each once.
 *
 * @param pointer names the field of the i-th badge, for the error
 * @throws UnknownBadge
 */
export const findPeople = async (
  tx: EntityManager,
  badges: readonly string[],
  pointer: (i: number) => string,
): Promise<readonly string[]> => {
  const found = await tx.query<{ root: string; badge: string }[]>(
    `select p.root, p.badge from fact.person p where lower(p.badge) = any($1) and ${standing('p')}`,
    [badges.map((badge) => badge.toLowerCase())],
  );
  const byBadge = new Map(found.map((person) => [person.badge.toLowerCase(), person.root]));
  const ids = badges.map((badge, i) => {
    const id = byBadge.get(badge.toLowerCase());
    if (id === undefined) throw new UnknownBadge(badge, pointer(i));
    return id;
  });
  return [...new Set(ids)];
};
