import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { connect } from 'node:net';
import type { HullView, ReachPage } from '@hull-record/contracts';
import { digestInDatabase, readEntries } from '../support/fact-rows.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, PORT_SIDE, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  for (const lot of ['R-1', 'R-2']) await shop.receive(lot, 'RES-VE');
  await shop.receive('G-1', 'GEL-W');
  await shop.receive('M-1', 'MAT-450', { amount: kg(5_000) });
});
afterAll(() => service.close());

const inTheWay = async (hull: string): Promise<readonly string[]> =>
  (await shop.read<HullView>(`/api/hulls/${hull}`)).release.inTheWay.map(({ rule }) => rule);

const holds = async (lot: string): Promise<readonly string[]> =>
  (await shop.read<ReachPage>(`/api/lots/${lot}/hulls`)).items.map(({ hull }) => hull ?? '');

const whole = (hull: string): ReturnType<Shop['wholeHull']> =>
  shop.wholeHull(hull, { gel: 'G-1', resin: { lot: 'R-1' }, glass: 'M-1' });

const rules = (receipt: Fields): unknown => (receipt['nonconformities'] as { rule: string }[]).map(({ rule }) => rule);

describe('a release', () => {
  it('is given once, and not to a hull that was scrapped', async () => {
    await whole('A-1');
    await shop.act('/api/hulls/A-1/releases', {});
    const again = await shop.post('/api/hulls/A-1/releases', shop.envelope());
    expect(again).toMatchObject({ status: 409, body: { type: '/problems/released-already' } });
    await whole('A-2');
    await shop.act('/api/hulls/A-2/life', { what: 'scrapped' });
    const scrapped = await shop.post('/api/hulls/A-2/releases', shop.envelope());
    expect(scrapped).toMatchObject({ status: 409, body: { type: '/problems/scrapped-already' } });
  });

  it('is not given while a layer has nothing recorded as used', async () => {
    const { bulk } = await whole('A-3');
    expect(await inTheWay('A-3')).toEqual([]);
    const used = await service.asOwner<{ id: string }>('select id from fact.used where into_id = $1', [bulk]);
    for (const { id } of used) await shop.correct(id);
    expect(await inTheWay('A-3')).toEqual(['nothing-used']);
  });

  it('waits for the newest repair of a defect, whatever became of an earlier one', async () => {
    await whole('A-4');
    const defect = await shop.defect('A-4-H');
    await shop.judge(await shop.repair('A-4-H', [defect]), true);
    expect(await inTheWay('A-4')).toEqual([]);
    const second = await shop.repair('A-4-H', [defect]);
    expect(await inTheWay('A-4')).toEqual(['defect-open']);
    await shop.judge(second, false);
    expect(await inTheWay('A-4')).toEqual(['defect-open']);
    await shop.judge(await shop.repair('A-4-H', [defect]), true);
    expect(await inTheWay('A-4')).toEqual([]);
  });

  it('does not rest on a concession for what was corrected since', async () => {
    await whole('A-5');
    const defect = await shop.defect('A-5-H', { lengthMm: 5 });
    await shop.dispose('defect', defect, 'use as is', 'C-A5');
    expect(await inTheWay('A-5')).toEqual([]);
    await shop.correct(defect, { kind: 'defect', lengthMm: 5_000 });
    expect(await inTheWay('A-5')).toEqual(['defect-open']);
  });

  it('does not count readings that were taken where no limit held', async () => {
    await shop.startHull('A-6');
    const layer = await shop.layer('A-6', 'L2', [{ lot: 'G-1', amount: kg(18) }]);
    await shop.film(layer, [
      [50, 55],
      [50, 55],
      [50, 55],
    ]);
    await shop.correct(layer, { kind: 'layer record', layer: 'L1' });
    expect(await inTheWay('A-6')).toContain('reading-missing');
  });

  it('is not held up by what was opened about a layer that was never made', async () => {
    await whole('A-7');
    await shop.receive('OLD', 'RES-VE', { expiresOn: '2025-12-31' });
    await shop.startHull('A-8');
    const wrong = await shop.layer('A-8', 'L3', [{ lot: 'OLD', amount: kg(5) }]);
    expect(await inTheWay('A-8')).toContain('nonconformity-open');
    await shop.correct(wrong);
    expect(await inTheWay('A-8')).not.toContain('nonconformity-open');
  });
});

describe('a received lot', () => {
  it('is quarantined until somebody says otherwise, also when what was said is withdrawn', async () => {
    const id = await shop.receive('Q-1', 'RES-VE');
    const [state] = await service.asOwner<{ id: string }>('select id from fact.lot_state where lot_id = $1', [id]);
    await shop.correct(state?.id ?? '');
    expect(await shop.read(`/api/lots/Q-1`)).toMatchObject({ state: 'quarantined' });
    await shop.startHull('Q-1');
    const { result } = await shop.receipt('/api/parts/Q-1-H/layers', made({ used: [{ lot: 'Q-1', amount: kg(1) }] }));
    expect(rules(result)).toContain('lot-not-released');
  });

  it('that is used before it came is kept as used, and said', async () => {
    const before = shop.tick();
    await shop.receive('Q-2', 'RES-VE');
    await shop.startHull('Q-2');
    const times = { startedAt: before, endedAt: before, happenedAt: before };
    const { result } = await shop.receipt(
      '/api/parts/Q-2-H/layers',
      made({ ...times, used: [{ lot: 'Q-2', amount: kg(1) }] }),
    );
    expect(rules(result)).toContain('used-before-it-came');
  });

  it('has a code that is not taken for an id, and that can be seen', async () => {
    const id = await shop.receive('Q-3', 'RES-VE');
    for (const code of [id, '..', 'A\u202eB', 'A\r\nB']) {
      const sample = { code, material: 'RES-VE', supplier: 'S', supplierLot: 'S', amount: kg(1) };
      const answer = await shop.post('/api/lots', shop.envelope(sample));
      expect([code, answer.status, answer.body]).toMatchObject([code, 400, { errors: [{ pointer: '/code' }] }]);
    }
  });
});

/** A skin coat, an hour after all before it. */
const made = (more: Fields): Fields => {
  const at = shop.tick();
  return { layer: 'L2', startedAt: at, endedAt: at, happenedAt: at, doneBy: ['LAM-1'], ...more };
};

describe('what is drawn from a tank for a layer', () => {
  it('is of the lot that was in it when the layer was made, whenever it is entered', async () => {
    await shop.fill('D-1', null, [{ lot: 'R-1', amount: kg(100) }]);
    const monday = shop.tick();
    await shop.fill('D-2', null, [{ lot: 'R-2', amount: kg(100) }]);
    await shop.startHull('D-1');
    const entered = { startedAt: monday, endedAt: monday, used: [{ tank: 'T1', amount: kg(5) }] };
    const layer = await shop.act('/api/parts/D-1-H/layers', made(entered));
    expect([await holds('D-1'), await holds('D-2')]).toEqual([['D-1'], []]);
    const later = shop.tick();
    await shop.correct(layer, { kind: 'layer record', startedAt: later, endedAt: later });
    expect([await holds('D-1'), await holds('D-2')]).toEqual([[], ['D-1']]);
  });

  it('is not held against the layer for what the tank held long ago', async () => {
    await shop.receive('PE', 'RES-PE', { amount: kg(100) });
    await shop.act('/api/tanks', { code: 'T2', material: 'RES-VE', capacityKg: 2_000 });
    const fill = (code: string, heel: Fields | null, lot: string): Promise<string> =>
      shop.act('/api/tanks/T2/fills', { code, heel, inputs: [{ lot, amount: kg(90) }] });
    await fill('P-0', null, 'PE');
    for (const n of [1, 2, 3, 4]) await fill(`P-${n}`, kg(10), 'R-1');
    await shop.startHull('P-1');
    const use = (lot: string): Fields => made({ used: [{ lot, amount: kg(1) }] });
    const first = await shop.receipt('/api/parts/P-1-H/layers', use('P-1'));
    expect(rules(first.result)).toContain('material-not-in-schedule');
    await shop.startHull('P-4');
    const last = await shop.receipt('/api/parts/P-4-H/layers', use('P-4'));
    expect(rules(last.result)).not.toContain('material-not-in-schedule');
  });
});

it('hangs on to no connection when clients hang up on a stream', async () => {
  const { hostname, port } = new URL(service.url);
  for (let i = 0; i < 30; i += 1) {
    const socket = connect(Number(port), hostname);
    await new Promise((resolve) => socket.once('connect', resolve));
    socket.write(`GET /api/lots/R-1/hulls.ndjson HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\n\r\n`);
    await new Promise((resolve) => setTimeout(resolve, 5));
    socket.destroy();
  }
  const answers = await Promise.all(Array.from({ length: 30 }, () => shop.get('/api/dealers')));
  expect(answers.map(({ status }) => status)).toEqual(Array.from({ length: 30 }, () => 200));
});

it('withdraws a layer with more readings than a statement has parameters', async () => {
  await shop.startHull('W-1');
  const layer = await shop.layer('W-1', 'L2', [{ lot: 'R-1', amount: kg(1) }]);
  const spots = Array.from({ length: 1_000 }, () => ({ value: 2, place: PORT_SIDE }));
  for (let i = 0; i < 8; i += 1)
    await shop.receipt(`/api/layers/${layer}/readings`, { what: 'thickness', unit: 'mm', spots });
  await shop.correct(layer);
  const [left] = await service.asOwner<{ n: number }>(
    `select count(*)::int as n from fact.reading g where g.of_id = $1
     and not exists (select from fact.correction c where c.corrects = g.id)`,
    [layer],
  );
  expect(left).toEqual({ n: 0 });
}, 60_000);

it('assigns one HIN of two that are assigned at once without a reason', async () => {
  for (const n of [1, 2, 3, 4]) {
    await shop.startHull(`N-${n}`);
    const both = [`TRZ9000${n}A626`, `TRZ9100${n}A626`];
    const answers = await Promise.all(both.map((hin) => shop.post(`/api/hulls/N-${n}/hins`, shop.envelope({ hin }))));
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 422]);
  }
});

it('keeps every digest when a later migration adds a column', async () => {
  const [entry] = (await readEntries(service)).slice(-1);
  const [row] = entry?.rows ?? [];
  expect(row).toBeDefined();
  await service.asOwner(`alter table fact.${row?.table ?? ''} add column added_later text`);
  expect(await digestInDatabase(service, row?.table ?? '', row?.id ?? '')).toBe(row?.sha256);
});

describe('a lot on which a duty to notify rests', () => {
  it('is not withdrawn: its hold would go with it, and the decision would hang in the air', async () => {
    const lot = await shop.receive('HELD-1', 'RES-VE');
    const hold = await shop.act('/api/lots/HELD-1/holds', { kind: 'safety', reason: 'gel time' });
    const discoveredOn = shop.tick().slice(0, 10);
    await shop.act(`/api/holds/${hold}/duty-decisions`, {
      ...{ decision: 'none', discoveredOn, decidedBy: 'QUA-1', why: 'not used yet' },
    });
    const refused = await shop.post('/api/corrections', shop.envelope({ corrects: lot, reason: 'entered twice' }));
    expect(refused).toMatchObject({ status: 409, body: { type: '/problems/duty-rests-on-this' } });
    expect((await shop.get(`/api/holds/${hold}/duty`)).status).toBe(200);
  });
});

describe('the advice of counsel in a decision', () => {
  it('is for those who give notices, and for nobody else at the plant', async () => {
    await shop.receive('HELD-2', 'RES-VE');
    const hold = await shop.act('/api/lots/HELD-2/holds', { kind: 'safety', reason: 'gel time' });
    const decision = await shop.act(`/api/holds/${hold}/duty-decisions`, {
      ...{ decision: 'none', discoveredOn: shop.tick().slice(0, 10), decidedBy: 'QUA-1', why: 'not used yet' },
      counsel: 'letter of the ninth',
    });
    const told = async (badge: string): Promise<boolean[]> =>
      Promise.all(
        [`/api/holds/${hold}/duty`, `/api/facts/${decision}/versions`].map(async (path) => {
          const answer = await fetch(`${service.url}${path}`, { headers: await service.signedIn(badge) });
          return (await answer.text()).includes('letter of the ninth');
        }),
      );
    expect(await told('QUA-1')).toEqual([true, true]);
    expect(await told('REC-1')).toEqual([false, false]);
  });
});
