import { describe, expect, it } from '@jest/globals';
import { ConfigWrong } from '../../../apps/service/src/platform/config/config.js';
import {
  whyNoDataDir,
  whyNotListening,
  whyNotStarted,
} from '../../../apps/service/src/platform/config/why-not-started.js';
import { EmbeddedPostgresError } from '../../../apps/service/src/platform/embedded/index.js';

const system = (code: string): Error => Object.assign(new Error(`${code}: as the system says`), { code });

describe('why the service did not start', () => {
  it('is told in one sentence when it is known', () => {
    expect(whyNotStarted(new ConfigWrong('PORT: is taken.'))).toBe('PORT: is taken.');
    expect(whyNotStarted(new EmbeddedPostgresError('already-owned', 'In use.'))).toBe('In use.');
  });

  it('keeps the lines of code of an error that nobody foresaw', () => {
    expect(whyNotStarted(new Error('surprise'))).toMatch(/surprise\n\s+at /);
    expect(whyNotStarted('a text')).toBe('a text');
  });

  it.each([
    ['EADDRINUSE', /^PORT: 80 on 127\.0\.0\.1 is taken/],
    ['EACCES', /^PORT: 80 .* set PORT to one above 1023/],
    ['EADDRNOTAVAIL', /set HOST to 127\.0\.0\.1/],
  ])('names the port for %s', (code, message) => {
    const why = whyNotListening(system(code), { host: '127.0.0.1', port: 80 });
    expect(why).toBeInstanceOf(ConfigWrong);
    expect((why as Error).message).toMatch(message);
  });

  it.each([
    ['EEXIST', 'is a file: name a folder'],
    ['ENOTDIR', 'lies below a file'],
    ['EACCES', 'cannot be made or written by this user'],
    ['EROFS', 'lies on a disk that is read only'],
    ['ENOSPC', 'cannot be made: the disk is full'],
  ])('names the data folder for %s', (code, message) => {
    const why = whyNoDataDir(system(code), '/srv/hulls');
    expect(why).toBeInstanceOf(ConfigWrong);
    expect((why as Error).message).toContain(`DATA_DIR: /srv/hulls ${message}`);
  });

  it('leaves other errors as they are', () => {
    const error = system('EIO');
    expect(whyNotListening(error, { host: '127.0.0.1', port: 1 })).toBe(error);
    expect(whyNoDataDir(error, '/srv')).toBe(error);
  });
});
