import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { resolveComposition } from '@hull-record/genealogy';
import { loadUpstream } from '../../apps/service/src/platform/composition/load-upstream.js';
import { NOW } from '../../apps/service/src/platform/views/making.js';
import { loadUpstreamAsOf } from '../../apps/service/src/records/load-upstream-as-of.js';
import { printed, readRecord } from '../support/read-record.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';
import { SCHEDULES, SKINS } from '../support/shop-stock.js';
import { recordWhole, type WholeRecord } from '../support/whole-record.js';

let service: RunningService;
let shop: Shop;
let whole: WholeRecord;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  whole = await recordWhole(shop);
}, 60_000);
afterAll(() => service.close());

/** The moment whose state a record prints. */
const stateOf = (text: string): string => /Asaninstant(\S+?Z)/.exec(text)?.[1] ?? 'no moment';

const refusal = async (path: string) => {
  const answer = await fetch(`${service.url}${path}`, { headers: await service.signedIn() });
  const body = (await answer.json()) as { type: string; errors?: { pointer: string }[] };
  return { status: answer.status, type: body.type, pointer: body.errors?.[0]?.pointer };
};

describe('A build record as of an instant', () => {
  it('before a correction prints what was recorded then, and no correction', async () => {
    const { text } = await readRecord(service, '86-1', whole.before);
    expect(text).toContain(printed('Vinyl ester resin 20 kg metered'));
    expect(text).not.toContain(printed('44.1 lb'));
    expect(text).toContain(printed('No facts of this hull have been corrected.'));
    expect(stateOf(text)).toBe(whole.before);
  });

  it('after a correction prints what stands since', async () => {
    const { text } = await readRecord(service, '86-1', whole.corrected);
    expect(text).toContain(printed('44.1 lb (20.003 kg) metered corrected'));
    expect(stateOf(text)).toBe(whole.corrected);
  });

  it('after the newest fact is the record as it is, to the last byte', async () => {
    const now = await readRecord(service, '86-1');
    for (const asOf of [whole.corrected, '2999-12-31T23:59:59Z', '2999-12-31T23:59:59+14:00']) {
      expect((await readRecord(service, '86-1', asOf)).bytes.equals(now.bytes)).toBe(true);
    }
  });

  it('of any moment is the record of the moment that it prints', async () => {
    const moments = await service.asOwner<{ at: Date }>(
      'select distinct recorded_at as at from fact.journal where recorded_at >= (select min(recorded_at) from fact.hull) order by 1',
    );
    expect(moments.length).toBeGreaterThan(10);
    // Every third, as each is drawn twice.
    for (const { at } of moments.filter((_, i) => i % 3 === 0)) {
      const then = await readRecord(service, '86-1', at.toISOString());
      const again = await readRecord(service, '86-1', stateOf(then.text));
      expect(again.bytes.equals(then.bytes)).toBe(true);
    }
  }, 60_000);

  it('before the hull was started is a refusal', async () => {
    const path = '/api/hulls/86-1/build-record.pdf?asOf=2020-01-01T00:00:00Z';
    expect(await refusal(path)).toMatchObject({ status: 404, type: '/problems/not-found' });
  });

  it('of an instant that is none is a refusal that names the field', async () => {
    const path = '/api/hulls/86-1/build-record.pdf?asOf=yesterday';
    expect(await refusal(path)).toMatchObject({ status: 400, pointer: '/asOf' });
  });

  it('of a hull that is not in the record is a refusal', async () => {
    const path = '/api/hulls/86-999/build-record.pdf';
    expect(await refusal(path)).toMatchObject({ status: 404, type: '/problems/not-found' });
  });
});

describe('What was found out later', () => {
  it('about a tank changes the suppliers’ lots from then on, and not before', async () => {
    const [input] = await service.asOwner<{ id: string }>(
      `select i.id from fact.lot_input i join fact.lot l on l.id = i.lot_id join fact.lot r on r.id = i.input_id
       where l.code = 'T1-2' and r.code = 'R-2'`,
    );
    await shop.correct(input?.id ?? '', { kind: 'lot input', amount: kg(100) });
    const now = await readRecord(service, '86-1');
    expect(now.text).toContain(printed('T1-2 in tank T1 S-R-1 (50 %) S-R-2 (50 %)'));
    expect(now.text).toContain(printed('What went into lot T1-2 amount 400 kg, metered amount 100 kg, weighed'));
    expect(now.text).toContain(printed('Lot T1-2 amount 500 kg, metered amount 200 kg, weighed'));
    const then = await readRecord(service, '86-1', whole.corrected);
    expect(then.text).toContain(printed('T1-2 in tank T1 S-R-2 (80 %) S-R-1 (20 %)'));
  });

  it('about a lot that is in the hull is said', async () => {
    const before = stateOf((await readRecord(service, '86-1')).text);
    await shop.setState('R-1', 'held');
    expect((await readRecord(service, '86-1')).text).toContain(printed('lot R-1 is held'));
    expect((await readRecord(service, '86-1', before)).text).not.toContain(printed('lot R-1 is held'));
  });

  it('about another hull changes nothing', async () => {
    const before = await readRecord(service, '86-1');
    await shop.startHull('86-5');
    await shop.layer('86-5', 'L1', [{ lot: 'G-1', amount: kg(17) }]);
    expect((await readRecord(service, '86-1')).bytes.equals(before.bytes)).toBe(true);
  });
});

describe('What lots are made of, from the facts of an instant', () => {
  it('is for every lot, as of now, what is kept as derived', async () => {
    const rows = await service.asOwner<{ root: string }>('select root from fact.lot where root = id');
    const lots = rows.map(({ root }) => root);
    const { graph, throughTank } = await loadUpstreamAsOf(service.db.manager, lots, NOW);
    const kept = await loadUpstream(service.db.manager, lots);
    expect(throughTank).toBe(true);
    expect(lots.length).toBeGreaterThan(7);
    for (const lot of lots) expect(resolveComposition(lot, graph)).toEqual(resolveComposition(lot, kept));
  });
});

describe('A layer recorded on the wrong hull', () => {
  it('is told by both, and what is recorded of it after the move by its own hull alone', async () => {
    await shop.startHull('86-3');
    await shop.startHull('86-4');
    const layer = await shop.layer('86-3', 'L1', [{ lot: 'G-1', amount: kg(18) }]);
    await shop.correct(layer, { kind: 'layer record', part: '86-4-H' });
    const left = await readRecord(service, '86-3');
    await shop.film(layer, [[16, 18]]);
    expect(left.text).toContain(printed('Layer Gel coat of 86-3-H part 86-3-H part 86-4-H'));
    expect(left.text).toContain(printed('No layer of this part has been made yet.'));
    expect((await readRecord(service, '86-3')).bytes.equals(left.bytes)).toBe(true);
    const { text } = await readRecord(service, '86-4');
    expect(text).toContain(printed('16 to under 18 mil'));
    expect(text).toContain(printed('G-1 S-G-1 (100 %)'));
  });

  it('or made by nobody is withdrawn with all that hung on it, told as one correction', async () => {
    await shop.startHull('86-6');
    const layer = await shop.layer('86-6', 'L1', [{ lot: 'G-1', amount: kg(18) }]);
    await shop.film(layer, [
      [16, 18],
      [18, 20],
    ]);
    await shop.sign(layer);
    const withdrawn = await shop.receipt('/api/corrections', { corrects: layer, reason: 'as it really was' });
    const { text } = await readRecord(service, '86-6');
    expect(text).toContain(printed('withdrawn, and with it 2 readings, 1 signature, 1 use'));
    expect(text).toContain(printed('3 layers are to be made'));
    expect(stateOf(text)).toBe(withdrawn['recordedAt']);
    expect(text.split(printed('as it really was'))).toHaveLength(2);
  });
});

describe('A fill that was earlier or later than recorded', () => {
  it('is told with every use that it gave another lot', async () => {
    await shop.startHull('86-8');
    await shop.layer('86-8', 'L2', [{ tank: 'T1', amount: kg(21) }]);
    const [fill] = await service.asOwner<{ id: string }>(
      `select l.id from fact.lot l where l.code = 'T1-2'
       and not exists (select from fact.correction c where c.corrects = l.id)`,
    );
    const before = stateOf((await readRecord(service, '86-8')).text);
    await shop.correct(fill?.id ?? '', { kind: 'lot', happenedAt: shop.tick() });
    const { text } = await readRecord(service, '86-8');
    expect(text).toContain(printed('T1-1 in tank T1 S-R-1 (100 %)'));
    expect(text).toContain(printed('Lot T1-2 used in Skin coat of 86-8-H lot T1-2 lot T1-1'));
    expect((await readRecord(service, '86-8', before)).text).toContain(printed('T1-2 in tank T1'));
  });
});

describe('A hull whose model requires a deck', () => {
  it('is not complete without one', async () => {
    const model = { code: 'TS90', name: 'TS 90, invented', skins: SKINS, requiredParts: ['deck'] };
    await shop.act('/api/models', model);
    await shop.act('/api/models/TS90/schedules', SCHEDULES[0] ?? {});
    await shop.act('/api/molds', { code: 'M-90-1', model: 'TS90', partKind: 'hull molding' });
    await shop.startHull('90-1', { model: 'TS90', mold: 'M-90-1' });
    const { text } = await readRecord(service, '90-1');
    expect(text).toContain(printed('Not complete: no deck is joined, 3 layers are to be made and the hull is not'));
  });
});

describe('A released hull', () => {
  it('is complete, and says what is open since', async () => {
    await shop.receive('R-9', 'RES-VE');
    await shop.wholeHull('86-7', { gel: 'G-1', resin: { lot: 'R-9' }, glass: 'M-1' });
    await shop.act('/api/hulls/86-7/releases', {});
    const released = await readRecord(service, '86-7');
    expect(released.text).toMatch(/Complete:released\d+Jan2026\d\d:\d\dUTC−5\.Life/);
    await shop.defect('86-7-H', { kind: 'prerelease' });
    const { text } = await readRecord(service, '86-7');
    expect(text).toMatch(/Complete:released\d+Jan2026\d\d:\d\dUTC−5\.Opensincethen:1defectisopen\./);
    expect(text).toContain(printed('Words for defects: common practice.'));
  });
});
