import { describe, expect, it } from '@jest/globals';
import { routes } from '@hull-record/contracts';
import { decodeHin, judgeSpot } from '@hull-record/trade';
import { BAD_LOT, planDemo } from '../../../apps/service/src/demo/plan/plan.js';
import type { ActName, Step } from '../../../apps/service/src/demo/plan/step.js';

const steps = planDemo();
const acts = (act: ActName): readonly Step[] => steps.filter((step) => step.act === act);
const texts = (act: ActName, field: string): readonly string[] => acts(act).map(({ body }) => String(body[field]));

describe('the plan of the demo plant', () => {
  it('is the same whenever it is made of the same seed', () => {
    expect(JSON.stringify(planDemo())).toBe(JSON.stringify(steps));
  });

  it('has other ids and other figures when it is made of another seed', () => {
    const other = planDemo('another shop');
    const ids = new Set(steps.map(({ body }) => body.id));
    expect(other.filter(({ body }) => ids.has(body.id))).toEqual([]);
    expect(JSON.stringify(other)).not.toContain('"quantity":"NaN"');
    expect(other.length).not.toBe(0);
  });

  it('names every step once, and gives each an id of its own', () => {
    expect(new Set(steps.map(({ name }) => name)).size).toBe(steps.length);
    expect(new Set(steps.map(({ body }) => body.id)).size).toBe(steps.length);
  });

  it('goes forward in time, in working hours, from the first day of the plant to the summer', () => {
    const times = steps.map(({ body }) => body.happenedAt);
    expect([...times].sort()).toEqual(times);
    expect(times[0]).toBe('2026-05-04T06:00:00.000Z');
    expect((times.at(-1) ?? '') < '2026-08-20').toBe(true);
    const off = times.filter(
      (at) => [0, 6].includes(new Date(at).getUTCDay()) || at.slice(11) < '06' || at.slice(11) > '16:30',
    );
    expect(off).toEqual([]);
  });

  it('sends only what the contract of each call takes', () => {
    const refused = steps.filter(({ act, body }) => !routes[act].body.safeParse(body).success);
    expect(refused.map(({ name }) => name)).toEqual([]);
  });

  it('gives every finished hull a number of the invented maker that reads well and is issued once', () => {
    const hins = texts('assignHin', 'hin');
    const readings = hins.map(decodeHin);
    expect(readings).toEqual(hins.map(() => expect.objectContaining({ valid: true, mic: 'TRZ', warnings: [] })));
    expect(new Set(hins).size).toBe(hins.length);
    expect(hins.length).toBeGreaterThanOrEqual(22);
  });

  it.each<readonly [ActName, number, number]>([
    ['registerModel', 2, 2],
    ['startHull', 30, 30],
    ['startPart', 60, 60],
    ['registerMaterial', 25, 27],
    ['receiveLot', 55, 75],
    ['reportDefect', 40, 55],
    ['recordRepair', 30, 50],
    ['releaseHull', 18, 25],
    ['correct', 2, 2],
  ])('has as many of %s as a small plant would: %i to %i', (act, least, most) => {
    expect(acts(act).length).toBeGreaterThanOrEqual(least);
    expect(acts(act).length).toBeLessThanOrEqual(most);
  });

  it('has readings outside their limits, but few', () => {
    const film = acts('readLayer').filter(({ body }) => body['what'] === 'wet film');
    const spots = film.flatMap(({ body }) => body['spots'] as { lastWet: string }[]);
    const limits = { min: 16, max: 22, unit: 'mil' } as const;
    const outside = spots.filter(
      ({ lastWet }) => judgeSpot({ low: Number(lastWet), unit: 'mil' }, limits).verdict !== 'inside',
    );
    expect(outside.length).toBeGreaterThan(0);
    expect(outside.length / spots.length).toBeLessThan(0.05);
  });

  it('receives the bad lot as any other, and releases it: only the search finds it', () => {
    expect(acts('receiveLot').filter(({ body }) => body['code'] === BAD_LOT)).toHaveLength(1);
    expect(
      acts('changeLotState')
        .filter((step) => step.of === BAD_LOT)
        .map(({ body }) => body['state']),
    ).toEqual(['released']);
  });
});
