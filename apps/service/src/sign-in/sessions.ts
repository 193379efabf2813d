import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { Cookies } from '../platform/access/cookies.js';
import type { Call } from '../platform/access/call.js';
import { digestOfSecret } from '../platform/access/secrets.js';
import { SessionEntity } from '../platform/access/work.entities.js';
import { newSecret } from '../platform/ids.js';

/** A session lasts a shift at most, h. */
const LASTS_H = 12;

/** Who signs in, and on which device. */
export interface Arriving {
  readonly personId: string;
  readonly deviceId: string;
  /** Whether the device is enrolled: then who had it before has it no longer. */
  readonly enrolled: boolean;
  /** Digest of the session that this browser had, when its cookie did not come along. */
  readonly sessionBefore?: Buffer | null;
}

/** Begins and ends sessions. The secret of each is new: nothing that a browser brought along is ever made a session. */
@Injectable()
export class Sessions {
  constructor(
    private readonly db: DataSource,
    private readonly cookies: Cookies,
  ) {}

  /** Begins a session, ends the one that this browser had, and gives its secret to the browser as a cookie. */
  async begin({ http }: Call, arriving: Arriving): Promise<string> {
    if (!http) throw new Error('A session begins in a call over HTTP.');
    const brought = this.cookies.read(http.request, 'session');
    const before = brought ? digestOfSecret(brought) : arriving.sessionBefore;
    const secret = await this.db.transaction(async (tx) => {
      if (before) await endByDigest(tx, before);
      return beginSession(tx, arriving);
    });
    this.cookies.set(http.response, 'session', secret);
    return secret;
  }

  async end({ http }: Call): Promise<void> {
    const secret = http && this.cookies.read(http.request, 'session');
    if (!http || !secret) return;
    await endByDigest(this.db.manager, digestOfSecret(secret));
    this.cookies.clear(http.response, 'session');
  }

  /** Ends every session of a person, but for that of this browser when it is to stay. */
  async endAllOf(personId: string, staying?: Call): Promise<void> {
    const secret = staying?.http && this.cookies.read(staying.http.request, 'session');
    const kept = secret ? digestOfSecret(secret) : null;
    await this.db.query(
      'update work.session set ended_at = now() where person_id = $1 and ended_at is null and digest is distinct from $2',
      [personId, kept],
    );
  }
}

const endByDigest = (tx: EntityManager, digest: Buffer): Promise<unknown> =>
  tx.query('update work.session set ended_at = now() where digest = $1 and ended_at is null', [digest]);

/** Begins a session and gives its secret, which is kept nowhere. */
export const beginSession = async (tx: EntityManager, { personId, deviceId, enrolled }: Arriving): Promise<string> => {
  const secret = newSecret();
  if (enrolled)
    await tx.query('update work.session set ended_at = now() where device_id = $1 and ended_at is null', [deviceId]);
  const at = new Date();
  await tx.insert(SessionEntity, {
    digest: digestOfSecret(secret),
    personId,
    deviceId,
    csrf: newSecret(),
    begunAt: at,
    seenAt: at,
    until: new Date(at.getTime() + LASTS_H * 3_600_000),
    endedAt: null,
  });
  return secret;
};
