import { Column, Entity, PrimaryColumn } from 'typeorm';

/** What a person signs in with, as an Argon2id verifier. Those of the demo serve only while the demo is on. */
@Entity({ schema: 'work', name: 'credential' })
export class CredentialEntity {
  @PrimaryColumn('uuid', { name: 'person_id' })
  personId!: string;

  @PrimaryColumn('text')
  kind!: 'pin' | 'passphrase';

  @Column('text')
  verifier!: string;

  @Column('boolean')
  demo!: boolean;

  @Column('timestamptz', { name: 'set_at' })
  setAt!: Date;
}

/** A one-time code with which a person chooses a PIN or passphrase. */
@Entity({ schema: 'work', name: 'first_code' })
export class FirstCodeEntity {
  @PrimaryColumn('uuid', { name: 'person_id' })
  personId!: string;

  @Column('bytea')
  digest!: Buffer;

  @Column('timestamptz')
  until!: Date;
}

/** A person at a browser. The secret of its cookie is kept as a digest; a session that ended stays, to tell who had the device. */
@Entity({ schema: 'work', name: 'session' })
export class SessionEntity {
  @PrimaryColumn('bytea')
  digest!: Buffer;

  @Column('uuid', { name: 'person_id' })
  personId!: string;

  @Column('uuid', { name: 'device_id' })
  deviceId!: string;

  @Column('text')
  csrf!: string;

  @Column('timestamptz', { name: 'begun_at' })
  begunAt!: Date;

  @Column('timestamptz', { name: 'seen_at' })
  seenAt!: Date;

  @Column('timestamptz')
  until!: Date;

  @Column('timestamptz', { name: 'ended_at', nullable: true })
  endedAt!: Date | null;
}

/** Wrong tries at signing in, counted by what they were about. */
@Entity({ schema: 'work', name: 'sign_in_failure' })
export class SignInFailureEntity {
  @PrimaryColumn('text')
  about!: string;

  @Column('integer')
  failures!: number;

  @Column('timestamptz', { name: 'locked_until' })
  lockedUntil!: Date;
}

/** Links a subject of the office's sign-in to a person. */
@Entity({ schema: 'work', name: 'open_id_link' })
export class OpenIdLinkEntity {
  @PrimaryColumn('text')
  issuer!: string;

  @PrimaryColumn('text')
  subject!: string;

  @Column('uuid', { name: 'person_id' })
  personId!: string;
}

/** A sign-in by the office that was begun, under the digest of what the browser has as cookie; it is spent once. */
@Entity({ schema: 'work', name: 'open_id_try' })
export class OpenIdTryEntity {
  @PrimaryColumn('bytea')
  digest!: Buffer;

  @Column('text')
  state!: string;

  @Column('text')
  nonce!: string;

  @Column('text')
  verifier!: string;

  @Column('bytea', { name: 'device_digest', nullable: true })
  deviceDigest!: Buffer | null;

  @Column('bytea', { name: 'session_digest', nullable: true })
  sessionDigest!: Buffer | null;

  @Column('timestamptz', { name: 'begun_at' })
  begunAt!: Date;

  @Column('timestamptz')
  until!: Date;
}

/** A token of a program, in the name of a person. */
@Entity({ schema: 'work', name: 'api_token' })
export class ApiTokenEntity {
  @PrimaryColumn('uuid')
  id!: string;

  @Column('bytea')
  digest!: Buffer;

  @Column('uuid', { name: 'person_id' })
  personId!: string;

  @Column('uuid', { name: 'device_id' })
  deviceId!: string;

  @Column('text')
  name!: string;

  @Column('text', { array: true })
  scopes!: string[];

  @Column('timestamptz')
  until!: Date;

  @Column('timestamptz', { name: 'used_at', nullable: true })
  usedAt!: Date | null;

  @Column('timestamptz', { name: 'revoked_at', nullable: true })
  revokedAt!: Date | null;
}
