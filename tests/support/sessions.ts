import { randomUUID } from 'node:crypto';
import type { DataSource } from 'typeorm';
import { ROLES } from '@hull-record/contracts';
import { ChangeRoles } from '../../apps/service/src/people/change-roles.js';
import { asService } from '../../apps/service/src/platform/access/call.js';
import { beginSession } from '../../apps/service/src/sign-in/sessions.js';

/** Headers of a request. */
export type Headers = Readonly<Record<string, string>>;

/** Gives ADMIN every job of the shop, as in a plant of one person. */
export const giveEveryJob = async (find: <T>(token: abstract new (...args: never[]) => T) => T): Promise<void> => {
  const jobs = ROLES.filter((role) => !['administrator', 'auditor', 'dealer'].includes(role));
  for (const role of jobs) {
    const envelope = { id: randomUUID(), enteredBy: 'ADMIN', device: 'DESK', happenedAt: new Date().toISOString() };
    await asService(() => find(ChangeRoles).grant('ADMIN', { ...envelope, role }));
  }
};

/**
 * Signs people in without their PIN, which has tests of its own: each session is begun by the service's own code, and
 * kept for who asks again.
 */
export const sessionsOf = (db: DataSource): ((badge?: string, device?: string) => Promise<Headers>) => {
  const begun = new Map<string, Promise<Headers>>();
  return (badge = 'ADMIN', device = 'DESK') => {
    const key = `${badge.toLowerCase()}\n${device}`;
    const kept = begun.get(key) ?? begin(db, badge, device);
    begun.set(key, kept);
    kept.catch(() => begun.delete(key));
    return kept;
  };
};

const begin = async (db: DataSource, badge: string, device: string): Promise<Headers> => {
  const [of] = await db.query<{ person: string; device: string }[]>(
    'select p.root as person, d.root as device from fact.person p, fact.device d where lower(p.badge) = lower($1) and d.code = $2',
    [badge, device],
  );
  if (!of) throw new Error(`There is no badge ${badge}, or no device ${device}, to sign in.`);
  const secret = await beginSession(db.manager, { personId: of.person, deviceId: of.device, enrolled: false });
  const [session] = await db.query<{ csrf: string }[]>(
    'select csrf from work.session where person_id = $1 order by begun_at desc limit 1',
    [of.person],
  );
  return { cookie: `hull-record-session=${secret}`, 'x-hull-record-csrf': session?.csrf ?? '' };
};
