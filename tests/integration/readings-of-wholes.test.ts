import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullView, LotView, PartView } from '@hull-record/contracts';
import { printed, readRecord } from '../support/read-record.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('VE-1', 'RES-VE');
  await shop.startHull('P1');
  await shop.layer('P1', 'L2', [{ lot: 'VE-1', amount: kg(20) }]);
});
afterAll(() => service.close());

const weight = (value: string, more: Fields = {}): Fields => ({
  ...{ what: 'part weight', unit: 'kg', spots: [{ value }] },
  ...{ limits: { min: 395, max: 425, unit: 'kg' }, source: 'target of the model', ...more },
});
const obstacles = async (): Promise<readonly string[]> =>
  (await shop.read<HullView>('/api/hulls/P1')).release.inTheWay.map(({ rule, detail }) => `${rule}: ${detail}`);

describe('the weight of a part', () => {
  it('inside its target is shown with the part, and printed', async () => {
    await shop.receipt('/api/parts/P1-H/readings', weight('410'));
    const { partReadings } = await shop.read<PartView>('/api/parts/P1-H');
    expect(partReadings).toMatchObject([{ what: 'part weight', value: '410', verdict: 'inside' }]);
    expect((await readRecord(service, 'P1')).text).toContain(printed('Readings of the part'));
  });

  it('outside it stands in the way of release until it is decided about', async () => {
    const { result } = await shop.receipt('/api/parts/P1-H/readings', weight('440'));
    const [spot] = (result as unknown as { spots: { id: string; verdict: string }[] }).spots;
    expect(spot?.verdict).toBe('outside');
    expect(await obstacles()).toContainEqual(expect.stringContaining('reading-outside: part weight spot 2: 440 kg'));
    await shop.dispose('reading', String(spot?.id), 'use as is', 'C-W1');
    expect((await obstacles()).filter((each) => each.includes('part weight'))).toEqual([]);
  });

  it('can be set right, and so can that of a joint', async () => {
    const [reading] = (await shop.read<PartView>('/api/parts/P1-H')).partReadings;
    await shop.correct(String(reading?.id), { kind: 'reading', value: '411' });
    expect((await shop.read<PartView>('/api/parts/P1-H')).partReadings[0]).toMatchObject({
      value: '411',
      verdict: 'inside',
    });
    await shop.startDeck('P1-D');
    const joint = await shop.join('P1', 'P1-D');
    const gap = { what: 'bond gap', unit: 'mm', spots: [{ value: '3' }] };
    const { result } = await shop.receipt(`/api/joints/${joint}/readings`, gap);
    const [spot] = (result as unknown as { spots: { id: string }[] }).spots;
    await shop.correct(String(spot?.id), { kind: 'reading', value: '4' });
    expect((await shop.read<PartView>('/api/parts/P1-D')).jointReadings).toMatchObject([{ value: '4' }]);
  });
});

describe('the gel time of a lot', () => {
  const gel = (value: string): Fields => ({
    ...{ what: 'gel time', unit: 'min', spots: [{ value }] },
    ...{ limits: { min: 14, max: 20, unit: 'min' }, source: 'certificate of the lot' },
  });

  it('inside is shown with the lot', async () => {
    await shop.receipt('/api/lots/VE-1/readings', gel('17'));
    expect((await shop.read<LotView>('/api/lots/VE-1')).readings).toMatchObject([
      { what: 'gel time', verdict: 'inside' },
    ]);
  });

  it('outside stands in the way of every hull it is in', async () => {
    await shop.receipt('/api/lots/VE-1/readings', gel('26'));
    expect(await obstacles()).toContainEqual(
      expect.stringContaining('gel time of the lot is outside its limits: 26 min'),
    );
  });
});

describe('a reading that cannot be', () => {
  const refused = async (path: string, body: Fields): Promise<unknown> =>
    (await shop.post(path, shop.envelope(body))).body;

  it('of such a thing, in such a unit, or of such a value is refused, and the field named', async () => {
    const at = (pointer: string) => ({ errors: [{ pointer }] });
    expect(await refused('/api/lots/VE-1/readings', weight('400'))).toMatchObject(at('/what'));
    expect(await refused('/api/parts/P1-H/readings', { ...weight('400'), unit: 'mm' })).toMatchObject(at('/unit'));
    expect(await refused('/api/parts/P1-H/readings', weight('-1'))).toMatchObject(at('/spots/0/value'));
    const damp = { what: 'moisture', unit: '%', spots: [{ value: '3' }, { value: '101' }] };
    expect(await refused('/api/parts/P1-H/readings', damp)).toMatchObject(at('/spots/1/value'));
    expect(await refused('/api/parts/P1-H/readings', { ...weight('400'), source: undefined })).toMatchObject(
      at('/source'),
    );
  });
});
