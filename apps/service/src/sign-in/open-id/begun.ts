import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { digestOfSecret } from '../../platform/access/secrets.js';
import { newSecret } from '../../platform/ids.js';
import { TooManyBegun } from './open-id-refusals.js';

/** As long as its cookie lives. */
const LASTS = "interval '10 minutes'";
/** More than a plant begins in that time; anybody may begin one. */
const MOST = 10_000;

const KEEP = `
  insert into work.open_id_try (digest, state, nonce, verifier, device_digest, session_digest, begun_at, until)
  select $1, $2, $3, $4, $5, $6, now(), now() + ${LASTS} where (select count(*) from work.open_id_try) < ${MOST}
  returning digest`;

const SPEND = `
  delete from work.open_id_try where digest = $1
  returning state, nonce, verifier, device_digest as "deviceDigest", session_digest as "sessionDigest",
    extract(epoch from now() - begun_at)::float8 as "secondsAgo", until > now() as "inTime"`;

/** What is to be remembered of a sign-in until the browser comes back from the provider. */
export interface Begun {
  readonly state: string;
  readonly nonce: string;
  /** The secret of PKCE (RFC 7636). */
  readonly verifier: string;
  /** Digest of the credential of the device, when the browser is enrolled: the cookie does not come along on the way back. */
  readonly deviceDigest: Buffer | null;
  /** Digest of the session that the browser has, for the same reason. */
  readonly sessionDigest: Buffer | null;
}

/** One that came back; when it was begun is told by the clock of this process. */
export interface SpentSignIn extends Begun {
  readonly begunAt: Date;
}

/**
 * Sign-ins by the office that were begun. They are kept here, and not sealed into the cookie: a row is deleted by who
 * spends it, so that nothing can be returned twice, and no key is needed that several processes share.
 */
@Injectable()
export class BegunSignIns {
  constructor(private readonly db: DataSource) {}

  /** @returns the id for the browser, of which only a digest is kept. @throws TooManyBegun */
  async keep({ state, nonce, verifier, deviceDigest, sessionDigest }: Begun): Promise<string> {
    const id = newSecret();
    await this.db.query('delete from work.open_id_try where until < now()');
    const kept = await this.db.query<unknown[]>(KEEP, [
      ...[digestOfSecret(id), state, nonce, verifier],
      ...[deviceDigest, sessionDigest],
    ]);
    if (kept.length === 0) throw new TooManyBegun();
    return id;
  }

  /** What was begun under an id, which is void then; null when there is nothing, or it took too long. */
  async spend(id: string): Promise<SpentSignIn | null> {
    const [rows] = await this.db.query<[(Begun & { secondsAgo: number; inTime: boolean })[], number]>(SPEND, [
      digestOfSecret(id),
    ]);
    const [begun] = rows;
    return begun?.inTime ? { ...begun, begunAt: new Date(Date.now() - begun.secondsAgo * 1_000) } : null;
  }
}
