import { describe, expect, it } from '@jest/globals';
import { CERTIFICATE_STATEMENT, type CertificateContent } from '@hull-record/contracts';
import { changedValues } from '../../../apps/service/src/records/certificates/printed-values.js';

const layer = { name: 'Gel coat', materials: 'Gel coat, white', made: '5 Jan 2026', readings: 'wet film 16 to 20 mil' };

const content = (more: Partial<CertificateContent> = {}): CertificateContent => ({
  format: 'hull-record/certificate/1',
  ...{ plant: 'TARROW', number: 'C-000001', issue: 1, issuedOn: '6 Jan 2026', hull: 'H1', hin: null },
  ...{ model: 'TS86', released: '6 Jan 2026', repaired: [], concessions: [], leftOut: [] },
  parts: [{ part: 'H1-H', kind: 'hull molding', layers: [layer] }],
  ...{ statement: CERTIFICATE_STATEMENT, signedBy: 'f' },
  ...more,
});

const withReadings = (readings: string, more: Partial<CertificateContent> = {}): CertificateContent =>
  content({ parts: [{ part: 'H1-H', kind: 'hull molding', layers: [{ ...layer, readings }] }], ...more });

const R2 = 'R2: void, starboard. Repaired, and accepted by another person.';

describe('what a correction changes of what is printed', () => {
  it('is named with what is on record now', () => {
    const issued = content();
    const after = withReadings('wet film 15 to 20 mil');
    expect(changedValues({ issued, before: issued, after, now: after })).toEqual([
      {
        what: 'hull molding H1-H, Gel coat, readings',
        printed: 'wet film 16 to 20 mil',
        now: 'wet film 15 to 20 mil',
      },
    ]);
  });

  it('is nothing when another value was added since the issue, or worded otherwise', () => {
    const issued = content();
    const later = withReadings('wet film from 16 to 20 mil', { repaired: [R2] });
    expect(changedValues({ issued, before: later, after: later, now: later })).toEqual([]);
  });

  it('is nothing when what it changed was never printed, or is again as it was', () => {
    const issued = content();
    const before = content({ repaired: [R2] });
    expect(changedValues({ issued, before, after: issued, now: issued })).toEqual([]);
    const wrong = withReadings('wet film 15 to 20 mil');
    expect(changedValues({ issued, before: wrong, after: issued, now: issued })).toEqual([]);
    expect(changedValues({ issued, before: issued, after: wrong, now: issued })).toEqual([]);
  });

  it('is what is gone: a repair, a concession, a HIN', () => {
    const concessions = ['Thickness 3 mm: used as is, concession K-7.'];
    const issued = content({ hin: 'TRZ00001A626', repaired: [R2], concessions });
    const after = content({ hin: 'TRZ00002A626' });
    const changed = changedValues({ issued, before: issued, after, now: after });
    expect(changed.map(({ what, now }) => [what, now])).toEqual([
      ['HIN', 'TRZ00002A626'],
      ['repair R2', null],
      ['concession K-7', null],
    ]);
  });
});
