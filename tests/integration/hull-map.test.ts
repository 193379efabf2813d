import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { DefectMap, MappedDefect, MappedDefectsPage, ReachPage } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;

/** A defect as this test reported it: what the map is compared with. */
interface Reported {
  readonly id: string;
  readonly hull: string;
  readonly kind: string;
  readonly layer: string | undefined;
  readonly mold: string;
  readonly day: string;
  readonly surface: 'shell' | 'transom';
  readonly along: number;
  readonly across: number;
}
const reported: Reported[] = [];

const SIDES = ['port', 'starboard', 'centreline'] as const;
const KINDS = ['dry-spot', 'air-bubble', 'scratch'] as const;
const HULLS = ['701', '702', '703', '704', '705', '706'];

const placeOf = (n: number): { place: Fields; along: number; across: number; surface: Reported['surface'] } => {
  const side = SIDES[n % 3] ?? 'port';
  const sign = side === 'port' ? 1 : side === 'starboard' ? -1 : 0;
  const out = side === 'centreline' ? 0 : (n * 137) % 850;
  if (n % 7 === 0) {
    const along = (n * 53) % 900;
    return {
      place: { surface: 'transom', side, offsetMm: out, heightMm: along },
      along,
      across: sign * out,
      surface: 'transom',
    };
  }
  const along = (n * 911) % 8_600;
  return {
    place: { surface: 'shell', side, fromTransomMm: along, girthMm: out },
    along,
    across: sign * out,
    surface: 'shell',
  };
};

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.act('/api/molds', { code: 'M-86-2', model: 'TS86', partKind: 'hull molding' });
  await shop.receive('VE-1', 'RES-VE');
  await shop.mix('MIX-1', [{ lot: 'VE-1', amount: kg(40) }]);
  for (const [i, hull] of HULLS.entries()) {
    const mold = i % 2 === 0 ? 'M-86-1' : 'M-86-2';
    await shop.startHull(hull, { mold });
    if (i < 2) await shop.layer(hull, 'L2', [{ lot: 'VE-1', amount: kg(20) }]);
    if (i === 2) await shop.layer(hull, 'L2', [{ lot: 'MIX-1', amount: kg(20) }]);
    for (let n = i * 10; hull !== '706' && n < i * 10 + 10; n += 1) {
      const { place, ...at } = placeOf(n);
      const [kind, layer] = [KINDS[n % KINDS.length] ?? 'scratch', n % 4 === 0 ? undefined : `L${(n % 3) + 1}`];
      // Half past midnight in UTC is the evening before by the clock of the plant, which is in New York.
      const happenedAt = new Date(Date.UTC(2026, 1, 10 + (n % 5), n % 2 === 0 ? 0 : 17, 30)).toISOString();
      const id = await shop.act(`/api/parts/${hull}-H/defects`, {
        kind,
        place,
        happenedAt,
        ...(layer ? { layer } : {}),
      });
      const day = new Date(Date.parse(happenedAt) - 5 * 3_600_000).toISOString().slice(0, 10);
      reported.push({ id, hull, kind, layer, mold, day, ...at });
    }
  }
  await shop.startDeck('707-D');
  await shop.defect('707-D', { place: { surface: 'shell', side: 'port', fromTransomMm: 100, girthMm: 100 } });
}, 120_000);
afterAll(() => service.close());

const query = (filter: Fields): string => new URLSearchParams(filter as Record<string, string>).toString();
const mapOf = (filter: Fields): Promise<DefectMap> => shop.read(`/api/models/TS86/defect-map?${query(filter)}`);

const listOf = async (filter: Fields): Promise<MappedDefect[]> => {
  const found: MappedDefect[] = [];
  for (let cursor: string | null = ''; cursor !== null;) {
    const page: MappedDefectsPage = await shop.read(
      `/api/models/TS86/defects?${query({ ...filter, limit: '7', ...(cursor ? { cursor } : {}) })}`,
    );
    found.push(...page.items);
    cursor = page.next;
  }
  return found;
};

const held = async (lot: string): Promise<ReadonlySet<string | null>> =>
  new Set((await shop.read<ReachPage>(`/api/lots/${lot}/hulls`)).items.map(({ hull }) => hull));

describe('the map of many hulls', () => {
  it.each<[string, Fields, (defect: Reported) => boolean]>([
    ['of all', {}, () => true],
    ['of one kind', { kind: 'air-bubble' }, ({ kind }) => kind === 'air-bubble'],
    ['of one layer', { layer: 'L2' }, ({ layer }) => layer === 'L2'],
    ['of one mold', { mold: 'M-86-2' }, ({ mold }) => mold === 'M-86-2'],
    [
      'of a period, by the clock of the plant',
      { from: '2026-02-10', until: '2026-02-11' },
      ({ day }) => day >= '2026-02-10' && day <= '2026-02-11',
    ],
    ['of the transom', { surface: 'transom' }, ({ surface }) => surface === 'transom'],
    [
      'of an area across the keel',
      { surface: 'shell', alongFrom: '1000', alongTo: '5000', acrossFrom: '-300', acrossTo: '450' },
      ({ surface, along, across }) =>
        surface === 'shell' && along >= 1_000 && along <= 5_000 && across >= -300 && across <= 450,
    ],
    [
      'of several at once',
      { kind: 'dry-spot', mold: 'M-86-1', surface: 'shell', acrossFrom: '0' },
      ({ kind, mold, surface, across }) =>
        kind === 'dry-spot' && mold === 'M-86-1' && surface === 'shell' && across >= 0,
    ],
  ])('%s shows what a count of all that was reported finds, drawn and listed', async (_, filter, fits) => {
    const expected = reported.filter(fits);
    expect(expected.length).toBeGreaterThan(0);
    const map = await mapOf(filter);
    const at = ({ id, kind, surface, along, across }: Reported) => ({ id, kind, surface, along, across });
    expect(new Map(map.points.map(({ part: _part, ...point }) => [point.id, point]))).toEqual(
      new Map(expected.map((defect) => [defect.id, at(defect)])),
    );
    expect(map.found).toBe(expected.length);
    expect(map.kinds.reduce((sum, { found }) => sum + found, 0)).toBe(expected.length);
    expect(map.partsWith).toBe(new Set(expected.map(({ hull }) => hull)).size);
    const listed = await listOf(filter);
    expect(listed.map(({ id }) => id).sort()).toEqual(expected.map(({ id }) => id).sort());
    expect(listed.map(({ happenedAt }) => happenedAt)).toEqual(
      listed
        .map(({ happenedAt }) => happenedAt)
        .toSorted()
        .toReversed(),
    );
    expect(
      listed.every(({ id, hull, mold }) =>
        expected.some((each) => each.id === id && each.hull === hull && each.mold === mold),
      ),
    ).toBe(true);
  });

  it.each([
    ['VE-1', ['701', '702', '703']],
    ['MIX-1', ['703']],
  ])('of the parts that hold lot %s are those on %s', async (lot, hulls) => {
    expect(await held(lot)).toEqual(new Set(hulls));
    const expected = reported.filter(({ hull }) => hulls.includes(hull));
    const { points, parts, recomputing } = await mapOf({ lot });
    expect(points.map(({ id }) => id).sort()).toEqual(expected.map(({ id }) => id).sort());
    expect([parts, recomputing]).toEqual([hulls.length, null]);
  });

  it('counts the parts that fit without a defect too, and keeps kinds of parts apart', async () => {
    expect((await mapOf({})).parts).toBe(HULLS.length);
    expect((await mapOf({ mold: 'M-86-2' })).parts).toBe(3);
    const deck = await mapOf({ partKind: 'deck' });
    expect([deck.parts, deck.found, deck.points.map(({ part }) => part)]).toEqual([1, 1, ['707-D']]);
  });

  it('shows a defect that was corrected where it is now, once', async () => {
    const [first] = reported as [Reported];
    await shop.correct(first.id, {
      kind: 'defect',
      place: { surface: 'shell', side: 'port', fromTransomMm: 4_321, girthMm: 12 },
    });
    const points = (await mapOf({ acrossFrom: '12', acrossTo: '12', alongFrom: '4321', alongTo: '4321' })).points;
    expect(points).toMatchObject([{ id: first.id, along: 4_321, across: 12 }]);
    expect((await mapOf({})).found).toBe(reported.length);
  });

  it.each([
    ['/api/models/NONE/defect-map', 404],
    ['/api/models/NONE/defects', 404],
    ['/api/models/TS86/defect-map?lot=NONE', 404],
    ['/api/models/TS86/defect-map?from=yesterday', 400],
    ['/api/models/TS86/defect-map?alongFrom=here', 400],
    ['/api/models/TS86/defects?cursor=xyz', 400],
  ])('%s is refused with %d', async (path, status) => {
    expect((await shop.get(path)).status).toBe(status);
  });
});
