import { AuthorizationResponseError, ResponseBodyError, WWWAuthenticateChallengeError } from 'openid-client';
import type { Refusal } from '../../platform/refusals.js';
import { OpenIdClientRefused, OpenIdDeclined, OpenIdNotProved, OpenIdUnavailable } from './open-id-refusals.js';

/** What the provider says of a client that it does not know (RFC 6749, section 5.2). */
const OF_THE_CLIENT: readonly string[] = ['invalid_client', 'unauthorized_client'];

/** What an error of the exchange means to the person. */
export const whyNotProved = (error: unknown, name: string): Refusal => {
  if (error instanceof AuthorizationResponseError) return new OpenIdDeclined(name);
  // A client that said by header who it is is refused by header (RFC 6749, section 5.2).
  if (error instanceof WWWAuthenticateChallengeError) return new OpenIdClientRefused(name);
  if (error instanceof ResponseBodyError && OF_THE_CLIENT.includes(error.error)) return new OpenIdClientRefused(name);
  return isOutage(error) ? new OpenIdUnavailable(name) : new OpenIdNotProved();
};

/** No answer, none in time, or one that is an error of the provider. */
const isOutage = (error: unknown): boolean => {
  if (typeof error !== 'object' || error === null) return false;
  const { code, status, message, cause } = error as Partial<Record<'code' | 'status' | 'message' | 'cause', unknown>>;
  if (code === 'OAUTH_TIMEOUT' || message === 'fetch failed') return true;
  return (typeof status === 'number' && status >= 500) || isOutage(cause);
};

/**
 * Words an error for the log by its codes alone: its message, cause and answer may hold a code, a token or a secret.
 *
 * @returns such as `TypeError ECONNREFUSED` or `ClientError OAUTH_JWT_CLAIM_COMPARISON_FAILED`
 */
export const wordForLog = (error: unknown): string => {
  if (!(error instanceof Error)) return 'no error';
  const { code, error: answer, cause } = error as { code?: unknown; error?: unknown; cause?: { code?: unknown } };
  return [error.name, code, answer, cause?.code].filter(isPlainWord).join(' ');
};

const isPlainWord = (word: unknown): word is string => typeof word === 'string' && /^[A-Za-z_]{1,60}$/.test(word);
