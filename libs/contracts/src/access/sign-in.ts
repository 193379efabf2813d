import { z } from 'zod';
import { Code, Instant, Text } from '../envelope.js';
import { ROLES } from '../people.js';

/** What a person signs in with. A PIN serves at an enrolled device and on the machine itself; elsewhere a passphrase does. */
export const Secret = z
  .string()
  .min(1)
  .max(200)
  .describe('a PIN of six digits or more, or a passphrase of twelve characters or more');

export const SignIn = z.strictObject({ badge: Code, secret: Secret }).meta({ id: 'SignIn' });
export type SignIn = z.output<typeof SignIn>;

export const UseFirstCode = z
  .strictObject({
    badge: Code,
    code: z
      .string()
      .trim()
      .min(1)
      .max(60)
      .describe('the one-time code that an administrator gave, or the start printed'),
    secret: Secret,
  })
  .meta({ id: 'UseFirstCode' });
export type UseFirstCode = z.output<typeof UseFirstCode>;

export const ChangeSecret = z.strictObject({ present: Secret, secret: Secret }).meta({ id: 'ChangeSecret' });
export type ChangeSecret = z.output<typeof ChangeSecret>;

/** Who is signed in here, or null; and the device when it is enrolled. */
export const SessionView = z
  .object({
    person: z.object({ badge: z.string(), roles: z.array(z.enum(ROLES)), dealer: z.string().nullable() }).nullable(),
    device: z.string().nullable().describe('code of the device on which facts are entered here'),
    enrolled: z.boolean().describe('whether this browser is an enrolled device'),
    csrf: z.string().nullable().describe('to be sent back as header x-hull-record-csrf with whatever is not GET'),
    until: Instant.nullable().describe('when the session ends at the latest'),
    plant: z.object({ code: z.string(), timeZone: z.string() }),
    openId: z.string().nullable().describe('name of the sign-in of the office, when there is one'),
    at: Instant.describe("now by the service's clock, for devices to compare theirs with"),
    demo: z.boolean().describe('whether demo people with demo PINs are there'),
  })
  .meta({ id: 'SessionView' });
export type SessionView = z.output<typeof SessionView>;

export const OneTimeCode = z
  .object({
    code: z.string().describe('shown this once; kept only as a digest'),
    until: Instant,
    caution: z.string().optional(),
  })
  .meta({ id: 'OneTimeCode' });
export type OneTimeCode = z.output<typeof OneTimeCode>;

export const EnrolDevice = z.strictObject({ code: z.string().trim().min(1).max(60) }).meta({ id: 'EnrolDevice' });
export type EnrolDevice = z.output<typeof EnrolDevice>;

export const EnrolledDevice = z
  .object({ device: z.string(), ratedForClassifiedArea: z.boolean(), caution: z.string() })
  .meta({ id: 'EnrolledDevice' });

export const SCOPES = ['read', 'record', 'papers'] as const;
export type Scope = (typeof SCOPES)[number];

export const CreateToken = z
  .strictObject({
    badge: Code.describe('the person in whose name the token works'),
    device: Code.describe('the registered device that stands for the program'),
    name: Text.max(80),
    scopes: z.array(z.enum(SCOPES)).min(1).describe('read: ask; record: send facts; papers: draw PDF'),
    days: z.number().int().min(1).max(366),
  })
  .meta({ id: 'CreateToken' });
export type CreateToken = z.output<typeof CreateToken>;

export const CreatedToken = z
  .object({ id: z.uuid(), token: z.string().describe('shown this once; kept only as a digest'), until: Instant })
  .meta({ id: 'CreatedToken' });

export const TokenView = z
  .object({
    id: z.uuid(),
    badge: z.string(),
    device: z.string(),
    name: z.string(),
    scopes: z.array(z.enum(SCOPES)),
    until: Instant,
    lastUsed: Instant.nullable(),
    revoked: z.boolean(),
  })
  .meta({ id: 'TokenView' });
export type TokenView = z.output<typeof TokenView>;

/** An account of the office, by what its provider calls it: a subject never changes and is nobody else's, unlike an e-mail. */
export const LinkOpenId = z
  .strictObject({
    subject: z.string().trim().min(1).max(255).describe('`sub` of the account, as a refused sign-in shows it'),
  })
  .meta({ id: 'LinkOpenId' });
export type LinkOpenId = z.output<typeof LinkOpenId>;

export const OpenIdLinkView = z.object({ issuer: z.string(), subject: z.string() }).meta({ id: 'OpenIdLinkView' });
export type OpenIdLinkView = z.output<typeof OpenIdLinkView>;

export const Done = z.object({ done: z.literal(true) }).meta({ id: 'Done' });
