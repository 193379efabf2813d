import { type Envelope, may, type Role, type RouteName, WHO_MAY } from '@hull-record/contracts';
import type { EntityManager } from 'typeorm';
import { EnteredElsewhere, NotAllowedThen } from '../access/access-refusals.js';
import type { SendingDevice } from '../access/call.js';
import { rolesAt } from '../access/roles.sql.js';
import { UnknownBadge } from '../refusals.js';
import type { Author } from './fact.js';
import { standing } from './standing.js';

type By = Pick<Envelope, 'enteredBy' | 'device' | 'happenedAt' | 'enteredAt'>;

interface Found {
  readonly id: string;
  readonly badge: string;
  readonly roles: Role[];
  readonly had_taken_over: boolean;
}

/** Whether this person had the device when it was entered: by a sign-in there that had not ended by then. */
const WHO = `
  select p.root as id, p.badge, ${rolesAt('p.root', '$2::timestamptz')} as roles,
    exists (select from work.session s where s.device_id = $3 and s.person_id = p.root
      and s.begun_at <= $2::timestamptz and $2::timestamptz <= least(s.until, coalesce(s.ended_at, s.until))) as had_taken_over
  from fact.person p where lower(p.badge) = lower($1) and ${standing('p')}`;

/**
 * Finds who made an entry that waited on a device: judged by what that person was allowed when it was entered. What has
 * happened to their session, roles or PIN since changes nothing.
 *
 * A person who had not taken the device over with a PIN is the author all the same; the entry is kept as unproved.
 *
 * @throws EnteredElsewhere, UnknownBadge, NotAllowedThen
 */
export const sentBy = async (
  tx: EntityManager,
  caller: SendingDevice,
  route: RouteName | null,
  by: By,
): Promise<Author> => {
  if (by.device !== caller.device) throw new EnteredElsewhere(by.device, caller.device);
  const entered = by.enteredAt ?? by.happenedAt;
  const [found] = await tx.query<Found[]>(WHO, [by.enteredBy, entered, caller.deviceId]);
  if (!found) throw new UnknownBadge(by.enteredBy, '/enteredBy');
  if (route === null || !may(found.roles, route)) throw new NotAllowedThen(found.badge, rolesFor(route));
  const { plantId, deviceId } = caller;
  const author = { plantId, deviceId, personId: found.id, badge: found.badge, roles: found.roles };
  return found.had_taken_over ? { ...author, identity: 'proved' } : { ...author, identity: 'stated', unproved: true };
};

const rolesFor = (route: RouteName | null): readonly Role[] => {
  const access = route === null ? [] : WHO_MAY[route];
  return typeof access === 'string' ? [] : access;
};
