import { describe, expect, it } from '@jest/globals';
import { attribute, lotsOf, SETTINGS, type Attribution, type Exposure, type Judged } from '@hull-record/statistics';
import { livePlant, PLANTED } from './cases-of-hulls.js';

const PLANT = { hulls: 600, roles: 6, lotsPerRole: 8, background: 0.05, bad: 0.6 };
const QUICK = { ...SETTINGS, worlds: 199, thetas: [0.3, 0.6], backgrounds: [0.5], beam: 20 };
const leader = (found: Attribution): readonly string[] => (found.rows[0] ? lotsOf(found.rows[0].suspect) : []);

describe('the attribution of claims to lots', () => {
  const { judged, exposures } = livePlant(PLANT, 1);
  const found = attribute(judged, exposures, QUICK);

  it('finds a planted lot, and says how it stands out', () => {
    expect(leader(found)).toEqual([PLANTED]);
    expect(found.verdict).toBe('strong');
    expect(found.rows[0]).toMatchObject({ strength: 'strong', adjusted: 1 / 200 });
    expect(found.rows[0]?.hazardOdds.lower).toBeGreaterThan(2);
    expect(found.rows[0]?.posterior?.least).toBeGreaterThan(0.9);
    expect(found.cover.steps[0]?.taken).toBe(0);
    expect(found.stable).toBe(true);
  });

  it('finds it in nine plants of ten', () => {
    const plants = Array.from({ length: 20 }, (_, seed) => livePlant(PLANT, 100 + seed));
    const right = plants.filter(
      ({ judged: own, exposures: lots }) =>
        leader(attribute(own, lots, { ...QUICK, worlds: 0, shown: 3 }))[0] === PLANTED,
    );
    expect(right.length).toBeGreaterThanOrEqual(18);
  });

  it('lets a lot stand out in no more than a tenth of plants without a bad one', () => {
    const plants = Array.from({ length: 200 }, (_, seed) => livePlant({ ...PLANT, bad: 0 }, 1000 + seed));
    const said = plants.filter(
      ({ judged: own, exposures: lots }) =>
        attribute(own, lots, { ...QUICK, worlds: 0, weighed: 5, shown: 3 }).verdict !== 'no lot stands out',
    );
    // At most 20 expected, standard deviation 4.2; exact tests of few claims keep well below.
    expect(said.length).toBeLessThanOrEqual(33);
  });

  it('does not hang on what lots are called or in which order they come', () => {
    const renamed = [...exposures].reverse().map((each) => ({ ...each, lot: `other ${each.lot}` }));
    const other = attribute(judged, renamed, QUICK);
    expect(leader(other)).toEqual([`other ${PLANTED}`]);
    expect(other.verdict).toBe(found.verdict);
    expect(other.rows.map(({ p, q }) => [p, q])).toEqual(found.rows.map(({ p, q }) => [p, q]));
    expect(other.rows[0]?.adjusted).toBe(found.rows[0]?.adjusted);
  });

  it('does not hang on the order of hulls, the simulated p apart', () => {
    const order = [...judged.ages.keys()].sort((a, b) => ((a * 7919) % 600) - ((b * 7919) % 600));
    const place = new Map(order.map((hull, i) => [hull, i]));
    const moved: Judged = {
      ages: Float64Array.from(order, (hull) => judged.ages[hull] ?? NaN),
      claimed: Uint8Array.from(order, (hull) => judged.claimed[hull] ?? 0),
      strata: Uint32Array.from(order, (hull) => judged.strata[hull] ?? 0),
    };
    const lots = exposures.map((each): Exposure => ({
      ...each,
      hulls: each.hulls.map((hull) => place.get(hull) ?? NaN).sort(),
    }));
    const other = attribute(moved, lots, QUICK);
    expect(other.rows.map(({ suspect }) => lotsOf(suspect))).toEqual(found.rows.map(({ suspect }) => lotsOf(suspect)));
    other.rows.forEach((row, i) => {
      expect(row.p / (found.rows[i]?.p ?? NaN)).toBeCloseTo(1, 9);
      expect(row.posterior?.typical).toBeCloseTo(found.rows[i]?.posterior?.typical ?? NaN, 9);
    });
    expect(other.verdict).toBe(found.verdict);
  });

  it('says "the data cannot say which" when another lot is in the same hulls, and names both', () => {
    const twin = exposures.flatMap((each) =>
      each.lot === PLANTED ? [each, { ...each, lot: 'twin', family: 'catalyst' }] : [each],
    );
    const other = attribute(judged, twin, QUICK);
    expect(other.verdict).toBe('the data cannot say which');
    expect(leader(other)).toEqual([PLANTED, 'twin']);
    expect(other.rows[0]?.strength).toBe('strong');
    expect(other.tests).toBe(found.tests);
  });

  it('says so too when another lot is in nearly the same hulls', () => {
    const near = exposures.flatMap((each) =>
      each.lot === PLANTED ? [each, { ...each, lot: 'near', hulls: each.hulls.slice(1) }] : [each],
    );
    const other = attribute(judged, near, QUICK);
    expect(other.verdict).toBe('the data cannot say which');
    expect([...leader(other), ...(other.rows[0]?.nearlySame ?? [])].sort()).toEqual(['near', PLANTED]);
  });

  it('sets lots apart that cannot be judged: in every hull, in none, in a single one without a claim', () => {
    const all = Uint32Array.from({ length: 600 }, (_, hull) => hull);
    const more = [
      { lot: 'everywhere', family: 'release', hulls: all },
      { lot: 'nowhere', family: 'release', hulls: new Uint32Array() },
    ];
    const other = attribute(judged, [...exposures, ...more], QUICK);
    expect(other.untestable.flatMap(({ suspect }) => lotsOf(suspect))).toEqual(
      expect.arrayContaining(['everywhere', 'nowhere']),
    );
    expect(other.tests).toBe(found.tests);
  });

  it('answers a case without a claim, and one without a lot', () => {
    const quiet = { ...judged, claimed: new Uint8Array(600) };
    expect(attribute(quiet, exposures, QUICK)).toMatchObject({ verdict: 'no lot stands out', rows: [], tests: 0 });
    expect(attribute(judged, [], QUICK)).toMatchObject({ verdict: 'no lot stands out', tests: 0 });
  });

  it('sees through age: a lot of old hulls has more claims in the raw table, and none too many for their time', () => {
    const hulls = 400;
    const old = (hull: number): boolean => hull < 200;
    const even: Judged = {
      // Claims come evenly at 100, 200 ... of any hull still watched; young hulls are watched for 250, old ones for 1000.
      ages: Float64Array.from({ length: hulls }, (_, hull) =>
        hull % 20 < 10 ? Math.min(100 * ((hull % 20) + 1), old(hull) ? 1000 : 250) : old(hull) ? 1000 : 250,
      ),
      claimed: Uint8Array.from({ length: hulls }, (_, hull) => (hull % 20 < (old(hull) ? 10 : 2) ? 1 : 0)),
      strata: new Uint32Array(hulls),
    };
    const lots = [{ lot: 'old', family: 'resin', hulls: Uint32Array.from({ length: 200 }, (_, hull) => hull) }];
    const row = attribute(even, lots, QUICK).rows[0];
    expect(row?.crude.p).toBeLessThan(1e-10);
    expect(row?.p).toBeGreaterThan(0.3);
    expect(row?.mixedWithAge).toBe(true);
  });

  it('tells of a lot by share: its threshold, and that more of it went with more claims', () => {
    const shares = (lot: Exposure): Float64Array =>
      Float64Array.from(lot.hulls, (hull) => (judged.claimed[hull] ? 0.9 : ((hull * 37) % 100) / 100));
    const shared = exposures.map((each) => (each.lot === PLANTED ? { ...each, shares: shares(each) } : each));
    const other = attribute(judged, shared, QUICK);
    expect(leader(other)).toEqual([PLANTED]);
    expect(other.rows[0]?.suspect.members[0]?.fromShare).toBeGreaterThan(0);
    expect(
      other.rows.find(({ suspect }) => suspect.members[0]?.lot === PLANTED && suspect.members[0].fromShare === 0)?.dose
        ?.p,
    ).toBeLessThan(1e-4);
    expect(other.stable).toBe(true);
  });
});
