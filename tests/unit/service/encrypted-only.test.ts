import { describe, expect, it } from '@jest/globals';
import { isPrivate } from '../../../apps/service/src/platform/http/encrypted-only.js';

describe('a request to a service that is reached over TLS', () => {
  it.each([
    ['over TLS, from anywhere', { peer: '198.51.100.7', passedOn: false, encrypted: true }, true],
    ['passed on by a proxy that took it over TLS', { peer: '172.30.5.2', passedOn: true, encrypted: true }, true],
    ['within this machine', { peer: '127.0.0.1', passedOn: false, encrypted: false }, true],
    ['within this machine, by IPv6', { peer: '::1', passedOn: false, encrypted: false }, true],
    [
      'within this machine, as a socket of both shows it',
      { peer: '::ffff:127.0.0.1', passedOn: false, encrypted: false },
      true,
    ],
    ['past the proxy, in clear', { peer: '198.51.100.7', passedOn: false, encrypted: false }, false],
    ['passed on by a proxy that took it in clear', { peer: '172.30.5.2', passedOn: true, encrypted: false }, false],
    ['the same, the proxy being on this machine', { peer: '127.0.0.1', passedOn: true, encrypted: false }, false],
    ['from an address that begins like ours', { peer: '127.0.0.1.evil', passedOn: false, encrypted: false }, false],
    ['from nobody knows where', { peer: '', passedOn: false, encrypted: false }, false],
  ])('%s', (_what, arrival, allowed) => expect(isPrivate(arrival)).toBe(allowed));
});
