import { describe, expect, it } from '@jest/globals';
import { answerOf } from '../../../apps/service/src/cases/answer/answer-of.js';
import {
  NOTHING_LEFT_OUT,
  type CaseInputs,
  type JudgedHull,
} from '../../../apps/service/src/cases/inputs/case-inputs.js';
import { caseSettings } from '../../study/case-of-plant.js';

const hull = (i: number, claimed: boolean, more: Partial<JudgedHull> = {}): JudgedHull => ({
  ...{ number: `H${i}`, built: '2025-01', since: '2025-02', stratum: 'S', from: 0, age: 100, claimed },
  ...{ claimAges: claimed ? [100] : [], until: 100, running: !claimed },
  ...more,
});

const inputs = (hulls: readonly JudgedHull[], more: Partial<CaseInputs> = {}): CaseInputs => ({
  ...{
    watchedUntil: '2026-06-30',
    exploratory: false,
    hulls,
    leftOut: NOTHING_LEFT_OUT,
    lots: [],
    others: [],
    spots: [],
  },
  ...{ belowWater: null, warrantyCapDays: null },
  ...more,
});

const lot = (name: string, hulls: readonly number[], shares = hulls.map(() => 1)) => ({
  ...{ lot: name, supplierLot: null, material: null, family: 'resin in hull molding, Skin coat', hulls, shares },
});
const run = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, i) => from + i);
const settings = { ...caseSettings(), attribution: { ...caseSettings().attribution, worlds: 0 } };

describe('the words of an answer', () => {
  it('are all about the class that the verdict is given for, where another has the larger posterior', async () => {
    const back = new Set([...run(0, 5), 7, 8, 9]);
    const hulls = run(0, 97).map((i) => hull(i, back.has(i), { stratum: i < 7 ? 'S0' : 'S1' }));
    const lots = [lot('A', run(0, 5)), ...run(0, 9).map((i) => lot(`N${i}`, run(7 + 10 * i, 17 + 10 * i)))];
    const answer = await answerOf(settings, inputs(hulls, { lots }));
    expect(answer.classes[0]?.named).toBe('A');
    expect(answer.classes[0]?.strength).toBe('none');
    expect(answer.sentences.join(' ')).toMatch(/Claims are associated with N0: 3 of 10/);
    expect(answer.sentences.join(' ')).not.toMatch(/associated with A\b/);
    expect(answer.next.join(' ')).toMatch(/retained samples of N0/);
    expect(answer.forecast?.groups.map(({ group }) => group)).toContain('hulls with N0');
    expect(answer.toInspect?.map(({ hull: number }) => number)).toEqual(run(10, 17).map((i) => `H${i}`));
  });

  it('say that there is nothing to judge where no claim counts', async () => {
    const { sentences } = await answerOf(settings, inputs(run(0, 20).map((i) => hull(i, false))));
    expect(sentences.at(-1)).toMatch(/^There is nothing to judge yet/);
    expect((await answerOf(settings, inputs([]))).sentences.at(-1)).toMatch(/^There is nothing to judge yet/);
  });

  it('tell the shares of a class by the largest that a hull has of one of its lots', async () => {
    const hulls = run(0, 40).map((i) => hull(i, i < 6));
    const trace = lot('TRACE', run(0, 8), [0.06, 0.06, 0.06, 0.06, 0.06, 0.06, 1, 1]);
    const { classes } = await answerOf(settings, inputs(hulls, { lots: [trace, lot('WHOLE', run(0, 8))] }));
    expect(classes[0]).toMatchObject({ lots: ['TRACE', 'WHOLE'], shares: { least: 1, median: 1, most: 1 } });
    expect(classes[0]?.atShares.at(-1)).toEqual({ fromShare: 0.2, hulls: 8, withClaim: 6 });
  });

  it('count hulls without an origin against all hulls that were asked for', async () => {
    const leftOut = { ...NOTHING_LEFT_OUT, withoutOrigin: 5, notLaunched: 10, before: 3, beforeOrigin: 2 };
    const { hulls } = await answerOf(
      settings,
      inputs(
        run(0, 30).map((i) => hull(i, false)),
        { leftOut },
      ),
    );
    expect(hulls.shareWithoutOrigin).toBe(0.1);
  });
});

describe('the forecast of an answer', () => {
  const claimsAt = (ages: readonly number[]): JudgedHull[] =>
    ages.map((age, i) => hull(i, true, { age, claimAges: [age], until: 400 }));

  it('expects no first claim of hulls that were scrapped or had one that does not count', async () => {
    const gone = run(10, 60).map((i) => hull(i, false, { age: 100, running: false }));
    const { forecast } = await answerOf(settings, inputs([...claimsAt([100, 180, 260]), ...gone]));
    const [all] = forecast?.groups ?? [];
    expect(all).toMatchObject({ expected: 0, interval: { lower: 0, upper: 0 } });
  });

  it('never expects more first claims than there are hulls left', async () => {
    const hulls = [
      ...claimsAt(run(0, 9).map((i) => 100 + 20 * i)),
      ...run(20, 23).map((i) => hull(i, false, { age: 300 })),
    ];
    const { forecast } = await answerOf(settings, inputs(hulls));
    const [all] = forecast?.groups ?? [];
    expect(all?.interval?.upper).toBeLessThanOrEqual(3);
    expect(all?.byMonthIntervals?.length).toBe(12);
    for (const [i, { lower, upper }] of (all?.byMonthIntervals ?? []).entries()) {
      expect(lower).toBeLessThanOrEqual(all?.byMonth[i] ?? NaN);
      expect(upper).toBeLessThanOrEqual(3);
    }
    expect(all?.medianRanks?.shape).toBeGreaterThan(0);
  });
});

describe('the places of an answer', () => {
  const claimed = (count: number): JudgedHull[] => run(0, count).map((i) => hull(i, true));

  it('count a hull once: many places of one are no cluster', async () => {
    const spots = [0.05, 0.2, 0.5].flatMap((x) => [0.2, 0.7].map((y) => ({ hull: 0, x, y })));
    const { places } = await answerOf(settings, inputs(claimed(1), { spots }));
    expect(places?.cluster?.p ?? 1).toBeGreaterThan(0.1);
    expect(places?.sentence).toMatch(/no group of zones stands out/);
  });

  it('are held against what lies below the waterline where the fault is one of the bottom', async () => {
    // One place a hull, evenly over the bottom: the inner half and a little of the outer one.
    const spots = run(0, 40).map((i) => ({
      hull: i,
      x: (i % 20) / 20 + 0.02,
      y: (i < 20 ? 1 : -1) * (0.02 + 0.029 * (i % 20)),
    }));
    const clustered = (await answerOf(settings, inputs(claimed(40), { spots }))).places?.cluster;
    const bottom = (await answerOf(settings, inputs(claimed(40), { spots, belowWater: 0.6 }))).places?.cluster;
    expect(clustered?.p).toBeLessThan(0.05);
    expect(bottom?.p).toBeGreaterThan(0.1);
  });
});
