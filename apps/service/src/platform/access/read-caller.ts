import { Injectable } from '@nestjs/common';
import type { Request } from 'express';
import { DataSource } from 'typeorm';
import { standing } from '../facts/standing.js';
import type { Caller, KnownPerson, SendingDevice } from './call.js';
import { Cookies } from './cookies.js';
import { dealerAt, rolesAt } from './roles.sql.js';
import { digestOfSecret } from './secrets.js';

/** Header with which a device says that it sends what waited on it, under its own credential. */
export const QUEUED = 'x-hull-record-queued';

/** A session ends when nothing was asked under it for so long, whatever its end. */
export const IDLE = "interval '4 hours'";

/** A caller with the secret that a browser must send back to change anything. */
export interface Read {
  readonly caller: Caller;
  readonly csrf: string | null;
  readonly until: Date | null;
}

/** A device by its cookie; revoked ones too, since what they still send is kept. */
export interface DeviceHere extends SendingDevice {
  readonly revoked: boolean;
}

const PERSON = `p.root as "personId", p.badge, p.plant_id as "plantId", d.root as "deviceId", d.code as device,
  ${rolesAt('p.root', 'now()')} as roles, ${dealerAt('p.root', 'now()')} as "dealerId"`;

const SESSION = `
  select ${PERSON}, s.csrf, s.until, s.seen_at < now() - interval '5 minutes' as stale
  from work.session s
  join fact.person p on p.root = s.person_id and ${standing('p')}
  join fact.device d on d.root = s.device_id and ${standing('d')}
  where s.digest = $1 and s.ended_at is null and s.until > now() and s.seen_at > now() - ${IDLE}`;

const TOKEN = `
  select ${PERSON}, t.scopes, t.until
  from work.api_token t
  join fact.person p on p.root = t.person_id and ${standing('p')}
  join fact.device d on d.root = t.device_id and ${standing('d')}
  where t.digest = $1 and t.revoked_at is null and t.until > now()`;

const DEVICE = `
  select d.plant_id as "plantId", d.root as "deviceId", d.code as device, c.revoked_at is not null as revoked
  from work.device_credential c join fact.device d on d.root = c.device_id and ${standing('d')}
  where c.digest = $1`;

type Row = Omit<KnownPerson, 'via' | 'scopes'> & { readonly until: Date };

/** Finds out who calls, by session, by the token of a program, or by the credential of a device. */
@Injectable()
export class ReadCaller {
  constructor(
    private readonly db: DataSource,
    private readonly cookies: Cookies,
  ) {}

  async person(request: Request): Promise<Read | null> {
    const bearer = /^Bearer (\S+)$/i.exec(request.headers.authorization ?? '')?.[1];
    return bearer === undefined ? this.bySession(request) : this.byToken(bearer);
  }

  async device(request: Request): Promise<DeviceHere | null> {
    const secret = this.cookies.read(request, 'device');
    return secret ? this.deviceBy(digestOfSecret(secret)) : null;
  }

  /** A device by the digest of its credential, where its cookie does not come along. */
  async deviceBy(digest: Buffer): Promise<DeviceHere | null> {
    const [row] = await this.db.query<Omit<DeviceHere, 'via'>[]>(DEVICE, [digest]);
    return row ? { via: 'device', ...row } : null;
  }

  private async bySession(request: Request): Promise<Read | null> {
    const secret = this.cookies.read(request, 'session');
    return secret ? this.session(secret) : null;
  }

  /** Who signed in, by the secret of a session. */
  async session(secret: string): Promise<Read | null> {
    const digest = digestOfSecret(secret);
    const [row] = await this.db.query<(Row & { csrf: string; stale: boolean })[]>(SESSION, [digest]);
    if (!row) return null;
    const { csrf, until, stale, ...person } = row;
    if (stale) await this.db.query('update work.session set seen_at = now() where digest = $1', [digest]);
    return { caller: { via: 'session', scopes: null, ...person }, csrf, until };
  }

  private async byToken(secret: string): Promise<Read | null> {
    const digest = digestOfSecret(secret);
    const [row] = await this.db.query<(Row & Pick<KnownPerson, 'scopes'>)[]>(TOKEN, [digest]);
    if (!row) return null;
    const { until, ...person } = row;
    await this.db.query(
      "update work.api_token set used_at = now() where digest = $1 and (used_at is null or used_at < now() - interval '1 minute')",
      [digest],
    );
    return { caller: { via: 'token', ...person }, csrf: null, until };
  }
}
