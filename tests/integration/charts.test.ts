import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ChartList, ChartView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
const OF = 'model=TS86&part=hull%20molding';
const chart = (what: string, query = ''): Promise<ChartView> =>
  shop.read(`/api/charts/${encodeURIComponent(what)}?${OF}${query}`);
const THICK = '&layer=L2';

/** A hull with a skin coat of a thickness in mm, read at one spot or several. */
const hullOf = async (number: string, spots: readonly string[], more: Fields = {}): Promise<typeof firstReading> => {
  await shop.startHull(number);
  const layer = await shop.layer(number, 'L2', [{ lot: 'R-1', amount: kg(5) }], more);
  const read = spots.map((value) => ({ value }));
  const { result } = await shop.receipt(`/api/layers/${layer}/readings`, {
    what: 'thickness',
    unit: 'mm',
    spots: read,
  });
  return { layer, reading: (result as unknown as { spots: { id: string }[] }).spots[0]?.id as string };
};

/** The ten flow rates of NIST/SEMATECH e-Handbook 6.3.2.2, here thicknesses of ten hulls. */
const NIST = ['49.6', '47.6', '49.9', '51.3', '47.8', '51.2', '52.6', '52.4', '53.6', '52.1'];
let firstReading: { layer: string; reading: string };

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('R-1', 'RES-VE');
  await shop.receive('G-1', 'GEL-W');
  for (const [i, value] of NIST.entries()) {
    const read = await hullOf(`86-${i + 1}`, [value]);
    if (i === 0) firstReading = read;
  }
}, 60_000);
afterAll(() => service.close());

const SETTINGS = { rules: 'Western Electric', run: 8, weight: 0.2, reach: 3, slack: 0.5, limit: 4 };
const freeze = (more: Fields = {}) =>
  shop.receipt('/api/charts/thickness/limits', {
    ...{ enteredBy: 'QUA-1', model: 'TS86', part: 'hull molding', layer: 'L2', from: '2026-01-01', to: '2026-01-31' },
    ...{ settings: SETTINGS, reason: 'a calm stretch', ...more },
  });

describe('a chart of hulls', () => {
  it('has the limits of the handbook: 50.81, 55.80241 and 45.81759 with d2 to six digits (pmc322)', async () => {
    const { means, points, hulls, fewest, unit, capability } = await chart('thickness', THICK);
    expect(means).toEqual({
      centre: expect.closeTo(50.81, 9),
      lower: expect.closeTo(45.81759, 4),
      upper: expect.closeTo(55.80241, 4),
    });
    expect(points.map(({ hull, mean }) => [hull, mean])).toEqual(
      NIST.map((value, i) => [`86-${i + 1}`, expect.closeTo(Number(value), 9)]),
    );
    expect([hulls < fewest, unit, capability.says]).toEqual([true, 'mm', 'no specification']);
  });

  it('is in the unit asked for, spreads too, and in no other dimension', async () => {
    const [mm, inches] = [await chart('thickness', THICK), await chart('thickness', `${THICK}&unit=in`)];
    expect(inches.means?.centre).toBeCloseTo(50.81 / 25.4, 9);
    expect(inches.movingRange?.centre).toBeCloseTo((mm.movingRange?.centre ?? 0) / 25.4, 9);
    expect((await shop.get(`/api/charts/thickness?${OF}${THICK}&unit=kg`)).status).toBe(400);
  });

  it('is of a layer, a mold, an area, a period: what is narrowed to nothing says so', async () => {
    for (const narrow of ['&layer=L3', `${THICK}&area=NO-SUCH`, `${THICK}&to=2025-12-31`])
      expect(await chart('thickness', narrow)).toMatchObject({ hulls: 0, why: 'too few hulls', points: [] });
    expect(await chart('thickness', `${THICK}&mold=M-86-1`)).toMatchObject({ hulls: 10, molds: ['M-86-1'] });
    expect((await shop.get(`/api/charts/thickness?${OF}&mold=M-NONE`)).status).toBe(422);
  });

  it('is never by person, and of nothing that is not charted', async () => {
    for (const by of ['doneBy=LAM-1', 'enteredBy=LAM-1', 'person=LAM-1'])
      expect((await shop.get(`/api/charts/thickness?${OF}&${by}`)).status).toBe(400);
    expect((await shop.get(`/api/charts/mood?${OF}`)).status).toBe(404);
  });

  it('counts readings that stand, and a spot that was read again as it was first', async () => {
    const again = [{ value: '55.5', readsAgain: firstReading.reading }];
    await shop.act(`/api/layers/${firstReading.layer}/readings`, { what: 'thickness', unit: 'mm', spots: again });
    expect((await chart('thickness', THICK)).points[0]).toMatchObject({ mean: expect.closeTo(49.6, 9), readings: 1 });
    const wrong = await shop.correct(firstReading.reading, { kind: 'reading', value: '50.6' });
    expect((await chart('thickness', THICK)).points[0]?.mean).toBeCloseTo(50.6, 9);
    await shop.correct(wrong, { kind: 'reading', value: '49.6' });
    const { means } = await chart('thickness', THICK);
    expect(means?.centre).toBeCloseTo(50.81, 9);
  });
});

describe('limits', () => {
  it('are frozen from a period with who, when and why; few hulls are said', async () => {
    const { result } = await freeze();
    expect(result).toMatchObject({ hulls: 10, unit: 'mm', warnings: [expect.stringContaining('fewer than 20')] });
    const { frozen } = await chart('thickness', THICK);
    expect(frozen).toMatchObject({ from: '2026-01-01', hulls: 10, reason: 'a calm stretch', by: 'QUA-1' });
    const list = await shop.read<ChartList>('/api/charts');
    expect(list.filter(({ what }) => what === 'wet film')).toMatchObject([
      { layer: 'L1', unit: 'mil', frozenAt: null },
    ]);
  });

  it('judge what follows: a hull beyond them is marked by its rule, and does not move them', async () => {
    await hullOf('86-11', ['60', '60.4', '59.6']);
    const { means, points, rules, stable } = await chart('thickness', THICK);
    expect(means?.centre).toBeCloseTo(50.81, 9);
    const last = points.at(-1);
    expect([last?.hull, last?.readings, stable]).toEqual(['86-11', 3, false]);
    expect(last?.fired.map((place) => rules[place])).toContainEqual({ kind: 'beyond', count: 1, of: 1, distance: 3 });
    expect((await chart('thickness', `${THICK}&rules=limits%20alone`)).rules).toHaveLength(1);
  });

  it('stay with the narrowed chart they were frozen for, and are withdrawn by a correction', async () => {
    expect((await chart('thickness', `${THICK}&mold=M-86-1`)).frozen).toBeNull();
    const { id } = await freeze({ reason: 'again' });
    const { history } = await chart('thickness', THICK);
    expect(history.map(({ reason }) => reason)).toEqual(['again', 'a calm stretch']);
    await shop.correct(id);
    expect((await chart('thickness', THICK)).frozen?.reason).toBe('a calm stretch');
  });

  it('need two hulls that differ', async () => {
    const body = shop.envelope({
      ...{ enteredBy: 'QUA-1', model: 'TS86', part: 'deck', from: '2026-01-01', to: '2026-01-31' },
      ...{ settings: SETTINGS, reason: 'none' },
    });
    expect((await shop.post('/api/charts/thickness/limits', body)).status).toBe(422);
  });
});

describe('capability and climate', () => {
  it('of a comb with three steps is not told: the gauge is too coarse', async () => {
    for (const [i, wet] of [16, 18, 16, 18, 20].entries()) {
      const layer = await shop.layer(`86-${i + 1}`, 'L1', [{ lot: 'G-1', amount: kg(18) }], {
        area: 'SPRAY',
        climate: { airTemperature: { value: 20 + i, unit: 'C' }, relativeHumidity: { value: 50, unit: '%' } },
      });
      await shop.film(layer, [
        [wet, wet + 2],
        [18, 20],
      ]);
    }
    const film = await chart('wet film', '&layer=L1');
    expect(film).toMatchObject({
      hulls: 5,
      specification: { min: 16, max: 20 },
      capability: { says: 'gauge too coarse', steps: 3 },
    });
    expect(film.points[0]).toMatchObject({ mean: expect.closeTo(18, 9), readings: 2 });
  });

  it('of the air is by the layers of each hull, in the area asked for', async () => {
    const air = await chart('air temperature', '&area=SPRAY');
    expect(air).toMatchObject({ unit: 'C', hulls: 5, areas: ['SPRAY'], specification: { min: 18, max: 28 } });
    expect(air.points.map(({ mean }) => mean)).toEqual([20, 21, 22, 23, 24].map((c) => expect.closeTo(c, 9)));
  });

  it('of catalyst is by the buckets and sprays in each hull, as they were judged', async () => {
    await shop.receive('C-1', 'MEKP');
    for (const [i, grams] of ['0.18', '0.2', '0.24'].entries()) {
      await shop.mix(`B-${i}`, [
        { lot: 'R-1', amount: kg(10) },
        { lot: 'C-1', amount: kg(grams) },
      ]);
      await shop.layer(`86-${i + 1}`, 'L3', [{ lot: `B-${i}`, amount: kg(10) }]);
    }
    const { points, unit } = await chart('catalyst', '&layer=L3');
    expect([unit, ...points.map(({ mean }) => mean)]).toEqual(['%', ...[1.8, 2, 2.4].map((x) => expect.closeTo(x, 9))]);
  });
});
