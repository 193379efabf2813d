import { hash, verify } from '@node-rs/argon2';
import { newSecret } from '../platform/ids.js';

/** Argon2id as RFC 9106, section 4, recommends it second: 64 MiB, three passes, four lanes, a tag of 256 bits. */
const COST = { memoryCost: 65_536, timeCost: 3, parallelism: 4, outputLen: 32 } as const;

/** The verifier of a secret, with a salt of its own; it never leaves the server. */
export const verifierOf = (secret: string): Promise<string> => hash(secret, COST);

let nobody: Promise<string> | undefined;

/** Whether a secret is the one of a verifier. Without a verifier it takes as long, and is not. */
export const isSecret = async (verifier: string | undefined, secret: string): Promise<boolean> => {
  if (verifier !== undefined) return verify(verifier, secret);
  nobody ??= verifierOf(newSecret());
  await verify(await nobody, secret);
  return false;
};
