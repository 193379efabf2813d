import { describe, expect, it } from '@jest/globals';
import { readConfig } from '../../../apps/service/src/platform/config/config.js';
import { CheckThrottle } from '../../../apps/service/src/records/certificates/check-throttle.js';
import { grouped, newCode, readCode } from '../../../apps/service/src/records/certificates/code.js';

describe('the settings of the sealed journal', () => {
  it('keep keys beside the files, and send heads nowhere, unless it is said', () => {
    const { evidence } = readConfig({ DATA_DIR: '/srv/hulls' });
    const nowhere = { folder: null, webhook: null, mail: null, signer: null };
    expect(evidence).toEqual({ keysDir: '/srv/hulls/keys', headsEveryMinutes: 60, ...nowhere });
  });

  it('are refused for mail that lacks where it goes, where it is from, or by which server', () => {
    expect(() => readConfig({ SMTP_URL: 'smtps://mail.example' })).toThrow('HEADS_MAIL_TO');
  });
});

describe('the code of a certificate', () => {
  it('has 128 bits in 26 signs, and is read however it was typed', () => {
    const codes = Array.from({ length: 200 }, newCode);
    expect(new Set(codes).size).toBe(200);
    for (const code of codes) {
      expect(code).toMatch(/^[0-7][0-9A-HJKMNP-TV-Z]{25}$/);
      expect(readCode(` ${grouped(code).toLowerCase().replaceAll('0', 'o').replaceAll('1', 'l')}-`)).toBe(code);
    }
  });
});

describe('who tries codes', () => {
  it('is answered later and later, and not at all after thirty in a minute', () => {
    let now = 0;
    const throttle = new CheckThrottle(() => now);
    const waits = Array.from({ length: 30 }, () => {
      throttle.count('one');
      return throttle.missed('one');
    });
    expect([waits[0], waits[1], waits.at(-1)]).toEqual([150, 300, 3_000]);
    expect(() => throttle.count('one')).toThrow('Too many');
    throttle.count('another');
    now = 60_000;
    throttle.count('one');
    expect(throttle.missed('one')).toBe(150);
  });
});
