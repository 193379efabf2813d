import { Injectable } from '@nestjs/common';
import type { CreateToken, TokenView } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { digestOfSecret } from '../platform/access/secrets.js';
import { ApiTokenEntity } from '../platform/access/work.entities.js';
import { findPeople } from '../platform/facts/author.js';
import { standing } from '../platform/facts/standing.js';
import { newId, newSecret } from '../platform/ids.js';
import { NotThere, UnknownDevice } from '../platform/refusals.js';
import { uuidOrNull } from '../platform/lookups/uuid-or-null.js';

const LIST = `
  select t.id, p.badge, d.code as device, t.name, t.scopes, t.until, t.used_at as "lastUsed",
    t.revoked_at is not null as revoked
  from work.api_token t
  join fact.person p on p.root = t.person_id and ${standing('p')}
  join fact.device d on d.root = t.device_id and ${standing('d')}
  order by t.until desc, t.id`;

type Row = Omit<TokenView, 'until' | 'lastUsed'> & { readonly until: Date; readonly lastUsed: Date | null };

/** Tokens of programs: each in the name of a person, with the rights of that person that its scopes leave. */
@Injectable()
export class Tokens {
  constructor(private readonly db: DataSource) {}

  /** Makes a token and tells it this once; kept is its digest. @throws UnknownBadge, UnknownDevice */
  async create({
    badge,
    device,
    name,
    scopes,
    days,
  }: CreateToken): Promise<{ id: string; token: string; until: string }> {
    const [personId] = await findPeople(this.db.manager, [badge], () => '/badge');
    const [of] = await this.db.query<{ id: string }[]>(
      `select d.root as id from fact.device d where d.code = $1 and ${standing('d')}`,
      [device],
    );
    if (!of) throw new UnknownDevice(device);
    const id = newId();
    const token = `hr_${newSecret()}`;
    const until = new Date(Date.now() + days * 24 * 3_600_000);
    await this.db.manager.insert(ApiTokenEntity, {
      ...{ id, digest: digestOfSecret(token), personId: personId as string, deviceId: of.id, name },
      ...{ scopes: [...new Set(scopes)], until, usedAt: null, revokedAt: null },
    });
    return { id, token, until: until.toISOString() };
  }

  async list(): Promise<TokenView[]> {
    const rows = await this.db.query<Row[]>(LIST);
    return rows.map((row) => ({
      ...row,
      until: row.until.toISOString(),
      lastUsed: row.lastUsed?.toISOString() ?? null,
    }));
  }

  /** @throws NotThere */
  async revoke(token: string): Promise<{ done: true }> {
    const [, revoked] = await this.db.query<[unknown[], number]>(
      `update work.api_token set revoked_at = coalesce(revoked_at, now()) where id = ${uuidOrNull('$1')}`,
      [token],
    );
    if (revoked === 0) throw new NotThere('token', token);
    return { done: true };
  }
}
