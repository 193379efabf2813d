import { describe, expect, it } from '@jest/globals';
import {
  AuthorizationResponseError,
  ClientError,
  ResponseBodyError,
  WWWAuthenticateChallengeError,
} from 'openid-client';
import { whyNotProved, wordForLog } from '../../../apps/service/src/sign-in/open-id/why-not-proved.js';

const answer = (error: string, status: number): ResponseBodyError =>
  new ResponseBodyError('refused code-of-ada', {
    cause: { error, error_description: 'code-of-ada' },
    response: new Response('code-of-ada', { status }),
  });

const withCode = (code: string, cause?: unknown): ClientError =>
  Object.assign(new ClientError('about code-of-ada', { cause }), { code });

const noConnection = new TypeError('fetch failed', { cause: Object.assign(new Error(), { code: 'ECONNREFUSED' }) });

const challenged = new WWWAuthenticateChallengeError('challenged code-of-ada', {
  cause: [{ scheme: 'basic', parameters: { realm: 'code-of-ada' } }],
  response: new Response('code-of-ada', { status: 401 }),
});

const declined = new AuthorizationResponseError('declined code-of-ada', {
  cause: new URLSearchParams({ error: 'access_denied', error_description: 'code-of-ada' }),
});

describe('an error of a sign-in by the office', () => {
  it.each([
    ['the provider declined', declined, 'open-id-declined', 'AuthorizationResponseError', 'access_denied'],
    [
      'a code that is not good',
      answer('invalid_grant', 400),
      'open-id-not-proved',
      'ResponseBodyError',
      'invalid_grant',
    ],
    ['a wrong secret', answer('invalid_client', 401), 'open-id-client-refused', 'ResponseBodyError', 'invalid_client'],
    ['a wrong secret in a header', challenged, 'open-id-client-refused', 'WWWAuthenticateChallengeError', ''],
    ['an error of its own', answer('server_error', 500), 'open-id-unavailable', 'ResponseBodyError', 'server_error'],
    ['no connection', noConnection, 'open-id-unavailable', 'TypeError', 'ECONNREFUSED'],
    ['no connection, told on', withCode('X', noConnection), 'open-id-unavailable', 'ClientError', 'X'],
    ['no answer in time', withCode('OAUTH_TIMEOUT'), 'open-id-unavailable', 'ClientError', 'OAUTH_TIMEOUT'],
    ['a bad gateway', withCode('A', new Response('', { status: 502 })), 'open-id-unavailable', 'ClientError', 'A'],
    ['a page', withCode('A', new Response('', { status: 404 })), 'open-id-not-proved', 'ClientError', 'A'],
    [
      'a claim that differs',
      withCode('OAUTH_JWT', { claims: 'code-of-ada' }),
      'open-id-not-proved',
      'ClientError',
      'OAUTH_JWT',
    ],
    ['anything else', new Error('code-of-ada'), 'open-id-not-proved', 'Error', ''],
  ])('%s: is told, and worded for the log without what it is about', (_what, error, code, name, word) => {
    const refusal = whyNotProved(error, 'Harbour office');
    expect(refusal.code).toBe(code);
    expect(JSON.stringify([refusal.message, refusal.data, wordForLog(error)])).not.toContain('code-of-ada');
    expect(wordForLog(error)).toMatch(new RegExp(`^${name}\\b.*${word}`));
  });

  it('that says more than a word says nothing', () => {
    expect(wordForLog(answer('access_token=code-of-ada', 400))).not.toContain('code-of-ada');
    expect(wordForLog('code-of-ada')).toBe('no error');
  });
});
