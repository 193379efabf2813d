import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { PartView } from '@hull-record/contracts';
import { holdLock } from '../support/hold-lock.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Answer, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('R', 'RES-VE');
});
afterAll(() => service.close());

const layer = (hull: string, used: readonly Fields[], at = shop.tick()): Promise<Answer> => {
  const times = { startedAt: at, endedAt: at, happenedAt: at };
  return shop.post(`/api/parts/${hull}-H/layers`, shop.envelope({ layer: 'L2', ...times, doneBy: ['LAM-1'], used }));
};

/** Sends two requests that both wait, so that they come in this order. */
const inOrder = async (first: () => Promise<Answer>, second: () => Promise<Answer>): Promise<Answer[]> => {
  const third = await holdLock(service, 'genealogy');
  const answers = [first()];
  await third.waiting(1);
  answers.push(second());
  await third.waiting(2);
  await third.letGo();
  return Promise.all(answers);
};

const lotsIn = async (hull: string): Promise<string[]> =>
  (await shop.read<PartView>(`/api/parts/${hull}-H`)).layers.flatMap(({ record }) =>
    (record?.used ?? []).map(({ lot }) => lot),
  );

describe('what is drawn from a tank while a fill of it is recorded late', () => {
  it.each(['fill', 'layer'])('is of the lot that was in it then, when the %s comes first', async (first) => {
    const hull = `LATE-${first}`;
    await shop.startHull(hull);
    await shop.act('/api/tanks', { code: hull, material: 'RES-VE', capacityKg: 900 });
    const inputs = [{ lot: 'R', amount: kg(10) }];
    await shop.act(`/api/tanks/${hull}/fills`, { code: `${hull}-1`, heel: null, inputs });
    const late = shop.envelope({ code: `${hull}-2`, heel: null, inputs });
    const fill = (): Promise<Answer> => shop.post(`/api/tanks/${hull}/fills`, late);
    const draw = (): Promise<Answer> => layer(hull, [{ tank: hull, amount: kg(5) }]);
    const answers = first === 'fill' ? await inOrder(fill, draw) : await inOrder(draw, fill);
    expect(answers.map(({ status }) => status)).toEqual([201, 201]);
    expect(await lotsIn(hull)).toEqual([`${hull}-2`]);
  });
});

describe('a lot that is used while it is withdrawn', () => {
  it.each([
    ['withdrawal', [201, 422]],
    ['use', [201, 409]],
  ] as const)('is not both, when the %s comes first', async (first, expected) => {
    const hull = `WITHDRAWN-${first}`;
    const id = await shop.receive(`LOT-${first}`, 'RES-VE');
    await shop.startHull(hull);
    const withdraw = (): Promise<Answer> =>
      shop.post('/api/corrections', shop.envelope({ corrects: id, reason: 'never came' }));
    const use = (): Promise<Answer> => layer(hull, [{ lot: `LOT-${first}`, amount: kg(5) }]);
    const answers = first === 'use' ? await inOrder(use, withdraw) : await inOrder(withdraw, use);
    expect(answers.map(({ status }) => status)).toEqual(expected);
    expect(await lotsIn(hull)).toEqual(first === 'use' ? ['LOT-use'] : []);
  });
});

describe('a layer that is recorded while another is corrected to be it', () => {
  it.each(['correction', 'record'])('is one layer, when the %s comes first', async (first) => {
    const [from, to] = [`FROM-${first}`, `TO-${first}`];
    for (const hull of [from, to]) await shop.startHull(hull);
    const wrong = await shop.layer(from, 'L2', []);
    const set = { kind: 'layer record', part: `${to}-H` };
    const move = (): Promise<Answer> =>
      shop.post('/api/corrections', shop.envelope({ corrects: wrong, reason: 'another hull', set }));
    const record = (): Promise<Answer> => layer(to, []);
    const answers = first === 'record' ? await inOrder(record, move) : await inOrder(move, record);
    expect(answers.map(({ status }) => status)).toEqual([201, 409]);
    const standing = await service.asOwner(
      `select from fact.layer_record r join fact.part p on p.id = r.part_id
       where p.number = $1 and not exists (select from fact.correction c where c.corrects = r.id)`,
      [`${to}-H`],
    );
    expect(standing).toHaveLength(1);
  });
});
