import { describe, expect, it } from '@jest/globals';
import {
  CAUTIONS,
  HIN_PLACEMENT,
  MATERIAL_ROLES,
  meetsWithoutResin,
  NEVER_MIX,
  NotACalendarDate,
  passedOver,
  promoterComesFirst,
  READING_KINDS_OF_THE_SHOP,
  weightAgainstTarget,
  type MaterialRole,
  type StoredLot,
} from '@hull-record/trade';
import fc from 'fast-check';

describe('controls of the shop', () => {
  it('each is read on something, and none below zero', () => {
    for (const { on, equipment, possible } of Object.values(READING_KINDS_OF_THE_SHOP)) {
      expect(on.length).toBeGreaterThan(0);
      expect(equipment.length).toBeGreaterThan(0);
      expect(possible.min).toBe(0);
    }
    expect(READING_KINDS_OF_THE_SHOP['Barcol hardness'].possible).toEqual({ min: 0, max: 100 });
  });

  it.each([
    [110, 100, 0.1],
    [100, 100, 0],
    [95, 100, -0.05],
  ])('a part of %d kg against %d kg is over by the fraction %d', (kg, target, over) => {
    expect(weightAgainstTarget(kg, target)).toBeCloseTo(over, 12);
  });

  it.each([
    [0, 100],
    [-1, 100],
    [NaN, 100],
    [Infinity, 100],
    [100, 0],
    [100, -1],
    [-100, -1],
    [100, NaN],
    [100, Infinity],
    [Infinity, Infinity],
  ])('a part of %d kg against %d kg cannot be judged', (kg, target) => {
    expect(weightAgainstTarget(kg, target)).toBeNull();
  });

  it('a heavier part is never less over its target', () => {
    const kg = fc.double({ min: 0.1, max: 5000, noNaN: true });
    fc.assert(
      fc.property(kg, kg, kg, (a, b, target) => {
        const [light, heavy] = [Math.min(a, b), Math.max(a, b)];
        expect(weightAgainstTarget(heavy, target)).toBeGreaterThanOrEqual(weightAgainstTarget(light, target) ?? NaN);
      }),
    );
  });
});

describe('catalyst and promoter', () => {
  it('the caution is said in these words, first of all cautions for mixing', () => {
    expect(NEVER_MIX).toBe('Never mix catalyst and promoter directly.');
    expect(CAUTIONS.mixing[0]).toBe(NEVER_MIX);
  });

  it.each([
    [['promoter', 'catalyst'], true],
    [['catalyst', 'promoter'], true],
    [['promoter', 'pigment', 'catalyst'], true],
    [['promoter', 'catalyst', 'resin'], true],
    [['catalyst', 'promoter', 'resin'], true],
    [['promoter', 'resin', 'catalyst'], false],
    [['catalyst', 'resin', 'promoter'], false],
    [['resin', 'promoter', 'catalyst'], false],
    [['gel coat', 'promoter', 'catalyst'], false],
    [['putty', 'promoter', 'catalyst'], false],
    [['bonding paste', 'promoter', 'catalyst'], false],
    [['catalyst'], false],
    [['promoter'], false],
    [['catalyst', 'pigment'], false],
    [['resin'], false],
    [[], false],
  ] as const)('%j: meet without resin %s', (roles: readonly MaterialRole[], meet) => {
    expect(meetsWithoutResin(roles.map((role) => [role]))).toBe(meet);
  });

  it.each([
    [['resin', 'promoter', 'catalyst'], true],
    [['resin', 'catalyst', 'promoter'], false],
    [['resin', 'promoter', 'catalyst', 'promoter'], false],
    [['catalyst', 'promoter'], false],
    [['resin', 'catalyst'], true],
    [['catalyst'], true],
    [['resin', 'promoter'], true],
    [['promoter'], true],
    [['resin'], true],
    [[], true],
  ] as const)('%j: the promoter went in first %s', (roles: readonly MaterialRole[], first) => {
    expect(promoterComesFirst(roles)).toBe(first);
  });

  it('what is in one lot goes in together: resin with promoter in it may be poured on catalyst, by this rule', () => {
    expect(meetsWithoutResin([['catalyst'], ['promoter', 'resin']])).toBe(false);
    expect(meetsWithoutResin([['catalyst', 'promoter'], ['resin']])).toBe(true);
  });

  it('whatever is mixed, without the one or without the other they do not meet', () => {
    const roles = fc.array(fc.constantFrom(...MATERIAL_ROLES));
    fc.assert(
      fc.property(roles, (mix) => {
        const alone = (without?: MaterialRole) => mix.filter((role) => role !== without).map((role) => [role]);
        expect(meetsWithoutResin(alone('catalyst'))).toBe(false);
        expect(meetsWithoutResin(alone('promoter'))).toBe(false);
        expect(meetsWithoutResin([['resin'], ...alone()])).toBe(false);
      }),
    );
  });
});

describe('lots used in sequence', () => {
  const used: StoredLot = { code: 'R-3', receivedOn: '2026-03-10', expiresOn: '2026-09-10' };
  const lot = (code: string, receivedOn: string, expiresOn: string | null): StoredLot => ({
    code,
    receivedOn,
    expiresOn,
  });

  it.each([
    ['one that came earlier', lot('R-1', '2026-03-09', '2026-06-30'), ['R-1']],
    ['one that came earlier and never expires', lot('R-1', '2026-01-10', null), ['R-1']],
    ['one that came the same day', lot('R-2', '2026-03-10', null), []],
    ['one that came later', lot('R-4', '2026-03-11', null), []],
    ['an earlier one on its last day', lot('R-1', '2026-01-10', '2026-06-01'), ['R-1']],
    ['an earlier one that has expired', lot('R-1', '2026-01-10', '2026-05-31'), []],
  ] as const)('%s is passed over, or not: %j', (_what, other, codes) => {
    expect(passedOver(used, [other], '2026-06-01')).toEqual(codes);
  });

  it('all are named, in the order they stand', () => {
    const others = [lot('R-2', '2026-02-01', null), lot('R-4', '2026-04-01', null), lot('R-1', '2026-01-01', null)];
    expect(passedOver(used, others, '2026-06-01')).toEqual(['R-2', 'R-1']);
    expect(passedOver(used, [], '2026-06-01')).toEqual([]);
  });

  it.each([
    [used, lot('R-1', '2026-02-30', null), '2026-06-01'],
    [lot('R-3', '2026-02-30', null), lot('R-1', '2026-01-01', null), '2026-06-01'],
    [used, lot('R-1', '2026-01-01', '2026-02-30'), '2026-06-01'],
    [used, lot('R-1', '2026-01-01', '2026-02-28'), '2026-06-31'],
  ] as const)('a day that does not exist is refused: %#', (using, other, on) => {
    expect(() => passedOver(using, [other], on)).toThrow(NotACalendarDate);
  });
});

describe('what is read where work is planned', () => {
  it('every list of cautions ends by deferring to data sheets, codes and the authority', () => {
    for (const list of Object.values(CAUTIONS)) {
      expect(list.at(-1)).toBe(
        "The material's safety and technical data sheets, local codes and the authority having jurisdiction come " +
          'first; leave what they reserve to licensed or certified people to them.',
      );
      for (const caution of list) expect(caution).toMatch(/^[A-Z].*\.$/);
    }
  });

  it('the two numbers of a hull go to two places, and the rule is named', () => {
    expect(HIN_PLACEMENT.primary).toContain('Starboard outboard side of the transom');
    expect(HIN_PLACEMENT.secondary).toBe('In an unexposed place inside, or beneath a fitting or item of hardware.');
    expect(HIN_PLACEMENT.source).toContain('33 CFR 181.29');
  });
});
