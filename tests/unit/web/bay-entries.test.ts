import { describe, expect, it } from '@jest/globals';
import { FLAW_ACCEPTANCE } from '@hull-record/trade';
import { badgesIn } from '../../../apps/web/src/bay/badges.js';
import { bodyOf, EMPTY, judgeDraft, missingIn } from '../../../apps/web/src/bay/defect/draft.js';
import { NOTHING_TAKEN, takenOf } from '../../../apps/web/src/bay/materials/taken-row.js';
import { readSought } from '../../../apps/web/src/bay/read-sought.js';
import { typedDecimal, typedNumber } from '../../../apps/web/src/words/typed-number.js';

const PLACE = { surface: 'shell', side: 'port', fromTransomMm: 3420, girthMm: 900 } as const;
const VOID = { ...EMPTY, place: PLACE, kind: 'air-bubble', long: '22', wide: '14' };
const LIMITS = { level: 'III', rows: [...FLAW_ACCEPTANCE], note: '', history: [] } as never;

describe('a figure as typed', () => {
  it('takes a point or a comma, and nothing else', () => {
    expect(['', ' 2 ', '2,5', '2.5', '1e3', '-1', '2 5'].map(typedNumber)).toEqual([
      ...[undefined, 2, 2.5, 2.5, Number.NaN, Number.NaN, Number.NaN],
    ]);
    expect([typedDecimal('0,40'), typedDecimal('x'), typedDecimal('')]).toEqual(['0.40', undefined, undefined]);
  });
});

describe('a defect as it is entered', () => {
  it('lacks its place and its kind first', () => {
    expect(missingIn(EMPTY, undefined)).toEqual(['place', 'kind']);
    expect(missingIn(VOID, undefined)).toEqual([]);
    expect(missingIn({ ...VOID, long: 'x' }, undefined)).toEqual(['figure']);
  });

  it('as a blister lacks how many there are, and an area beside a count', () => {
    const blister = { ...VOID, kind: 'blister', d714: '6', counted: '12' };
    expect(missingIn(blister, undefined)).toEqual(['grade', 'area']);
    const whole = { ...blister, frequency: 'MD', area: '0,5' };
    expect(missingIn(whole, undefined)).toEqual([]);
    expect(bodyOf(whole)).toMatchObject({ grade: '6MD', counted: 12, countedAreaM2: 0.5, lengthMm: 22 });
    expect(bodyOf({ ...whole, kind: 'pit' })).not.toHaveProperty('counted');
  });

  it('is judged by its larger size at the level of the plant', () => {
    expect(judgeDraft(VOID, LIMITS)).toMatchObject({ verdict: 'rejected', limit: 3 });
    expect(judgeDraft({ ...VOID, long: '2', wide: '3' }, LIMITS)).toMatchObject({ verdict: 'accepted' });
    expect(judgeDraft({ ...VOID, long: '', wide: '' }, LIMITS)).toMatchObject({ verdict: 'cannot be judged' });
  });
});

describe('what a scanner or a person types', () => {
  it('is a code, or the path of a label', () => {
    expect(readSought(' 86-1 ')).toEqual({ code: '86-1' });
    expect(readSought('https://plant.example/l/part/86%2F7-H')).toEqual({ code: '86/7-H' });
    expect(readSought('/l/hull/86-1')).toEqual({ code: '86-1' });
    expect(readSought('/l/lot/VE-2231')).toEqual({ label: '/l/lot/VE-2231' });
  });

  it('as material is a lot, or the container of its label', () => {
    const row = { ...NOTHING_TAKEN, quantity: '0,4' };
    expect(takenOf({ ...row, code: 'VE-1' })).toEqual({
      ...{ lot: 'VE-1', amount: { quantity: '0.4', unit: 'kg', basis: 'weighed' } },
    });
    expect(takenOf({ ...row, code: '/l/container/C-9' })).toMatchObject({ container: 'C-9' });
    expect([takenOf(row), takenOf({ ...row, code: 'VE-1', quantity: '0' })]).toEqual([null, null]);
  });

  it('as material is a tank, a gun, or what nobody can name, as soon as it says what it looked like', () => {
    const row = { ...NOTHING_TAKEN, quantity: '2' };
    expect(takenOf({ ...row, from: 'tank', code: 'T1' })).toMatchObject({ tank: 'T1' });
    expect(takenOf({ ...row, code: '/l/equipment/GUN-1' })).toMatchObject({ gun: 'GUN-1' });
    const unnamed = { ...row.unnamed, likely: 'VE-1, VE-2' };
    expect(takenOf({ ...row, from: 'unidentified', unnamed })).toBeNull();
    const told = { ...unnamed, looks: 'amber, in a pail', foundAt: 'by door 2' };
    expect(takenOf({ ...row, from: 'unidentified', unnamed: told })).toMatchObject({
      unidentified: { role: 'resin', looks: 'amber, in a pail', foundAt: 'by door 2', likely: ['VE-1', 'VE-2'] },
    });
  });

  it('as badges is each once', () => {
    expect(badgesIn('pat-1, PAT-1;lam-2')).toEqual(['PAT-1', 'LAM-2']);
  });
});
