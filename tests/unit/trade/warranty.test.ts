import { describe, expect, it } from '@jest/globals';
import { warrantyTerm, type WarrantyTerms } from '@hull-record/trade';

const TERMS: WarrantyTerms = {
  starts: ['warranty registered', 'sold to first purchaser'],
  covers: [
    { kinds: ['blister'], years: 5, bearsPercent: [100, 100, 60, 40, 20] },
    { kinds: [], years: 1, bearsPercent: [] },
  ],
  transfer: { carries: true, untilYears: 2 },
};
const SOLD = { what: 'sold to first purchaser', on: '2024-05-10' };
const asked = (reportedOn: string, kind = 'blister') => ({ kind, reportedOn });

describe('a warranty', () => {
  it('runs from the first of its starts on record, to the day before its anniversary', () => {
    expect(warrantyTerm(TERMS, [SOLD], asked('2029-05-09'))).toMatchObject({
      ...{ within: true, startsOn: '2024-05-10', startsWith: 'sold to first purchaser', endsOn: '2029-05-09' },
      ...{ year: 5, bearsPercent: 20, says: [] },
    });
    expect(warrantyTerm(TERMS, [SOLD], asked('2029-05-10'))).toMatchObject({ within: false, year: 6, bearsPercent: 0 });
    const registered = { what: 'warranty registered', on: '2024-06-01' };
    expect(warrantyTerm(TERMS, [SOLD, registered], asked('2024-06-01'))).toMatchObject({
      startsOn: '2024-06-01',
      year: 1,
    });
    expect(warrantyTerm(TERMS, [SOLD, registered], asked('2024-05-31'))).toMatchObject({ within: false, year: null });
  });

  it('covers each kind for its own years, and the rest by the cover that names none', () => {
    expect(warrantyTerm(TERMS, [SOLD], asked('2025-05-09', 'sag'))).toMatchObject({ within: true, bearsPercent: 100 });
    expect(warrantyTerm(TERMS, [SOLD], asked('2025-05-10', 'sag')).within).toBe(false);
    const blistersAlone = { ...TERMS, covers: TERMS.covers.slice(0, 1) };
    expect(warrantyTerm(blistersAlone, [SOLD], asked('2024-06-01', 'sag'))).toMatchObject({
      within: false,
      says: ['The terms do not cover sag.'],
    });
  });

  it('cannot be told without a start on record', () => {
    const said = warrantyTerm(TERMS, [{ what: 'at dealer', on: '2024-05-01' }], asked('2024-06-01'));
    expect(said).toMatchObject({ within: null, startsOn: null, bearsPercent: null });
    expect(said.says).toEqual(['When it began is not on record: warranty registered, or sold to first purchaser.']);
  });

  it('is shortened by a transfer, or ends with it', () => {
    const life = [SOLD, { what: 'transferred', on: '2025-01-15' }];
    expect(warrantyTerm(TERMS, life, asked('2026-05-09'))).toMatchObject({ within: true, endsOn: '2026-05-09' });
    expect(warrantyTerm(TERMS, life, asked('2026-05-10')).within).toBe(false);
    const ends = { ...TERMS, transfer: { carries: false } };
    expect(warrantyTerm(ends, life, asked('2025-01-15')).within).toBe(true);
    expect(warrantyTerm(ends, life, asked('2025-01-16'))).toMatchObject({ within: false, endsOn: '2025-01-15' });
    expect(warrantyTerm({ ...TERMS, transfer: { carries: true } }, life, asked('2029-05-09')).within).toBe(true);
  });

  it.each([
    ['is not begun again by a transfer after its end', { carries: false }, '2022-01-01', ['2025-05-01'], '2022-12-31'],
    ['is not ended before the transfer', { carries: true, untilYears: 2 }, '2020-01-01', ['2023-06-01'], '2023-06-01'],
    [
      'goes by the first transfer after its start',
      { carries: false },
      '2024-06-01',
      ['2024-01-01', '2026-01-01'],
      '2026-01-01',
    ],
    [
      'is not made longer by what would carry over',
      { carries: true, untilYears: 9 },
      '2020-01-01',
      ['2021-01-01'],
      '2024-12-31',
    ],
  ])('%s', (_what, transfer, sold, moves, endsOn) => {
    const years = endsOn === '2022-12-31' ? 1 : 5;
    const terms = { ...TERMS, covers: [{ kinds: [], years, bearsPercent: [] }], transfer };
    const life = [{ what: 'sold to first purchaser', on: sold }, ...moves.map((on) => ({ what: 'transferred', on }))];
    expect(warrantyTerm(terms, life, asked(sold))).toMatchObject({ within: true, endsOn });
    expect(warrantyTerm(terms, life, asked(endsOn)).within).toBe(true);
  });

  it('that began on 29 February ends with 28 February', () => {
    const life = [{ what: 'warranty registered', on: '2024-02-29' }];
    expect(warrantyTerm(TERMS, life, asked('2025-02-28', 'sag'))).toMatchObject({ within: true, endsOn: '2025-02-28' });
    expect(warrantyTerm(TERMS, life, asked('2025-03-01', 'sag')).within).toBe(false);
  });
});
