import type { Envelope, Role } from '@hull-record/contracts';
import type { EntityManager } from 'typeorm';
import { EnteredByAnother, EnteredElsewhere, SignInNeeded } from '../access/access-refusals.js';
import { callNow, type KnownPerson } from '../access/call.js';
import { rolesAt } from '../access/roles.sql.js';
import { UnknownBadge, UnknownDevice } from '../refusals.js';
import type { Author } from './fact.js';
import { standing } from './standing.js';
import { sentBy } from './sent-by.js';

type By = Pick<Envelope, 'enteredBy' | 'device' | 'happenedAt' | 'enteredAt'>;

/**
 * Finds who records this, and on which device. The device belongs to a plant, and so does the fact.
 *
 * A person who signed in records in the own name, on the own device. A device that sends what waited on it names who
 * had taken it over when it was entered. The service itself says whom it means.
 *
 * @throws EnteredByAnother, EnteredElsewhere, NotAllowedThen, UnknownBadge, UnknownDevice
 */
export const findAuthor = async (tx: EntityManager, by: By): Promise<Author> => {
  const { caller, route } = callNow();
  if (caller === null) throw new SignInNeeded();
  if (caller.via === 'service') return stated(tx, by.enteredBy, by.device);
  if (caller.via === 'device') return sentBy(tx, caller, route, by);
  return signedIn(caller, by);
};

const signedIn = (caller: KnownPerson, { enteredBy, device }: By): Author => {
  if (enteredBy.toLowerCase() !== caller.badge.toLowerCase()) throw new EnteredByAnother(enteredBy, caller.badge);
  if (device !== caller.device) throw new EnteredElsewhere(device, caller.device);
  const { plantId, personId, deviceId, badge, roles } = caller;
  return { plantId, personId, deviceId, badge, roles, identity: 'proved' };
};

const stated = async (tx: EntityManager, badge: string, device: string): Promise<Author> => {
  const [personId] = await findPeople(tx, [badge], () => '/enteredBy');
  const [found] = await tx.query<{ id: string; plant_id: string; roles: Role[] }[]>(
    `select d.root as id, d.plant_id, ${rolesAt('$2::uuid', 'now()')} as roles from fact.device d where d.code = $1 and ${standing('d')}`,
    [device, personId],
  );
  if (!found) throw new UnknownDevice(device);
  const { id: deviceId, plant_id: plantId, roles } = found;
  return { plantId, personId: personId as string, deviceId, badge, roles, identity: 'stated' };
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
