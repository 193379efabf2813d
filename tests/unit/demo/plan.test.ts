import { describe, expect, it } from '@jest/globals';
import { routes } from '@hull-record/contracts';
import { decodeHin, judgeSpot } from '@hull-record/trade';
import { BAD_LOT, planDemo } from '../../../apps/service/src/demo/plan/plan.js';
import type { ActName, Step } from '../../../apps/service/src/demo/plan/step.js';
import { unknownFields } from '../../../apps/service/src/platform/http/unknown-fields.js';

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

  it('goes forward in time over eighteen months, in working hours but for the night shift', () => {
    const times = steps.map(({ body }) => body.happenedAt);
    expect([...times].sort()).toEqual(times);
    expect(times[0]).toBe('2025-01-06T06:00:00.000Z');
    expect((times.at(-1) ?? '') > '2026-07-01' && (times.at(-1) ?? '') < '2026-08-20').toBe(true);
    const off = steps.filter(({ body: { happenedAt: at } }) => at.slice(11) < '06' || at.slice(11) > '16:30');
    const byDay = off.filter(({ name }) => !/H4|defect|-R\d|kit|fill|climate|gun/.test(name));
    expect(byDay.map(({ name }) => name)).toEqual([]);
    expect(off.filter(({ name }) => / H4$/.test(name)).length).toBeGreaterThanOrEqual(10);
  });

  it('sends only what the contract of each call takes', () => {
    const refused = steps.filter(({ act, body }) => !routes[act].body.safeParse(body).success);
    expect(refused.map(({ name }) => name)).toEqual([]);
    const unread = steps.flatMap(({ act, name, body }) =>
      unknownFields(body, routes[act].body.parse(body)).map(({ path }) => `${name}: ${path.join('/')}`),
    );
    expect(unread).toEqual([]);
  });

  it('gives every finished hull a number of the invented maker that reads well and is issued once', () => {
    const hins = texts('assignHin', 'hin');
    const readings = hins.map(decodeHin);
    expect(readings).toEqual(hins.map(() => expect.objectContaining({ valid: true, mic: 'TRZ', warnings: [] })));
    expect(new Set(hins).size).toBe(hins.length);
    expect(hins.length).toBeGreaterThanOrEqual(110);
  });

  it('receives about forty lots a quarter', () => {
    const quarter = (at: string): string => `${at.slice(0, 4)} ${Math.floor((Number(at.slice(5, 7)) - 1) / 3)}`;
    const counts = new Map<string, number>();
    for (const { body } of acts('receiveLot'))
      counts.set(quarter(body.happenedAt), (counts.get(quarter(body.happenedAt)) ?? 0) + 1);
    const whole = [...counts.values()].slice(0, 6);
    expect(Math.min(...whole)).toBeGreaterThanOrEqual(30);
    expect(Math.max(...whole)).toBeLessThanOrEqual(60);
  });

  it.each<readonly [ActName, number, number]>([
    ['registerModel', 3, 3],
    ['startHull', 120, 120],
    ['startPart', 241, 241],
    ['scrapPart', 1, 1],
    ['registerMaterial', 25, 27],
    ['registerTank', 2, 2],
    ['setGun', 3, 3],
    ['receiveLot', 210, 280],
    ['reportDefect', 170, 210],
    ['fileClaim', 7, 7],
    ['freezeCase', 1, 1],
    ['addPhoto', 6, 6],
    ['recordRepair', 130, 170],
    ['recordTouchUp', 70, 90],
    ['checkEquipment', 35, 45],
    ['releaseHull', 105, 116],
    ['registerOwner', 70, 90],
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
