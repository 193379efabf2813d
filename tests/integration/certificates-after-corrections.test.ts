import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { LotView } from '@hull-record/contracts';
import { createApp } from '../../apps/service/src/create-app.js';
import { keepLooksWaiting, lookedAt, newestOf } from '../support/after-corrections.js';
import { check, issued, releasedHull } from '../support/certificates.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
}, 120_000);
afterAll(() => service.close());

const hullWithCertificate = async (hull: string): Promise<void> => {
  await issued(shop, await releasedHull(shop, hull));
};

/** Ids of the film readings of a hull, the lowest first: 16, 18 and 18 mil. */
const readingsOf = async (hull: string): Promise<string[]> =>
  (
    await service.asOwner<{ id: string }>(
      `select g.id from fact.reading g join fact.layer_record r on r.id = g.of_id join fact.part p on p.id = r.part_id
       where p.number = '${hull}-H' and g.what = 'wet film'
         and not exists (select from fact.correction c where c.corrects = g.id) order by g.value, g.id`,
    )
  ).map(({ id }) => id);

const correct = (corrects: unknown, set: Fields | undefined, reason = 'read again'): Promise<string> =>
  shop.act('/api/corrections', { corrects, reason, ...(set === undefined ? {} : { set }) });

describe('a correction', () => {
  it('that changes a printed value withdraws the certificate, names itself and tells what changed', async () => {
    await hullWithCertificate('A-1');
    const [reading] = await readingsOf('A-1');
    const correction = await correct(reading, { kind: 'reading', lastWet: '15', nextDry: '17' });
    await lookedAt(service);
    const now = await newestOf(shop, 'A-1');
    expect(now).toMatchObject({ state: 'withdrawn', becauseOf: correction });
    expect(now.withdrawnFor).toContain('read again');
    expect(now.changed).toEqual([
      expect.objectContaining({ what: expect.stringMatching(/Gel coat, readings$/), now: expect.any(String) }),
    ]);
    const { body } = await check(service, { sha256: now.sha256 });
    expect(body).toMatchObject({ is: 'withdrawn' });
    expect(JSON.stringify(body)).not.toContain('read again');
    const [by] = await service.asOwner<{ by: string; identity: string }>(
      `select p.badge as by, j.identity from fact.certificate_withdrawn w join fact.journal j on j.id = w.entry_id
       join fact.person p on p.id = j.person_id where w.because_of = '${correction}'`,
    );
    expect(by).toEqual({ by: 'ADMIN', identity: 'stated' });
  });

  it('that changes nothing that is printed leaves the certificate as it is', async () => {
    await hullWithCertificate('B-1');
    const [layer] = await service.asOwner<{ id: string }>(
      `select r.id from fact.layer_record r join fact.part p on p.id = r.part_id where p.number = 'B-1-H' limit 1`,
    );
    await correct(layer?.id, { kind: 'layer record', note: 'a word more' });
    const [, middle] = await readingsOf('B-1');
    // The lowest and the highest of the kind are printed, and this is neither.
    await correct(middle, { kind: 'reading', lastWet: '17', nextDry: '19' });
    await lookedAt(service);
    expect(await newestOf(shop, 'B-1')).toMatchObject({ state: 'current', becauseOf: null, changed: null });
  });

  it('that reaches it through a bucket withdraws it, and a hull with nothing of it keeps its own', async () => {
    for (const [lot, material] of Object.entries({ G: 'GEL-W', R: 'RES-VE', O: 'RES-PE', M: 'MAT-450' }))
      await shop.receive(`D-${lot}`, material);
    await shop.mix('D-B', [{ lot: 'D-R', amount: kg(100) }]);
    await shop.wholeHull('D-1', { gel: 'D-G', resin: { lot: 'D-B' }, glass: 'D-M' });
    await shop.act('/api/hulls/D-1/releases', {});
    await issued(shop, 'D-1');
    await hullWithCertificate('D-2');
    const { inputs } = await shop.read<LotView>('/api/lots/D-B');
    const correction = await correct(inputs[0]?.id, { kind: 'lot input', input: 'D-O' });
    await lookedAt(service);
    const now = await newestOf(shop, 'D-1');
    expect(now).toMatchObject({ state: 'withdrawn', becauseOf: correction });
    expect(now.changed?.[0]).toMatchObject({
      printed: expect.stringContaining('Vinyl ester resin'),
      now: expect.stringContaining('Polyester resin'),
    });
    expect(await newestOf(shop, 'D-2')).toMatchObject({ state: 'current' });
  });

  it('at the same time as another withdraws once', async () => {
    await hullWithCertificate('E-1');
    const [first, , last] = await readingsOf('E-1');
    const both = await Promise.all([
      correct(first, { kind: 'reading', lastWet: '15', nextDry: '16' }),
      correct(last, { kind: 'reading', lastWet: '21', nextDry: '22' }),
    ]);
    await lookedAt(service);
    const now = await newestOf(shop, 'E-1');
    expect(now.state).toBe('withdrawn');
    expect(both).toContain(now.becauseOf);
    const again = await issued(shop, 'E-1').catch((error: unknown) => error);
    expect(String(again)).toContain('certificate-suspended');
  });
});

describe('the look at certificates', () => {
  it('waits in the database with the correction, and is taken by whatever service runs next', async () => {
    await hullWithCertificate('F-1');
    const letGo = await keepLooksWaiting(service);
    const [reading] = await readingsOf('F-1');
    const correction = await correct(reading, { kind: 'reading', lastWet: '15', nextDry: '17' });
    expect(await newestOf(shop, 'F-1')).toMatchObject({ state: 'current' });
    const plant = { code: 'TARROW', timeZone: 'America/New_York' };
    const second = await createApp({ db: service.db, dataDir: service.dataDir, plant, quiet: true });
    await letGo();
    await lookedAt(service);
    await second.close();
    expect(await newestOf(shop, 'F-1')).toMatchObject({ state: 'withdrawn', becauseOf: correction });
  });
});

describe('a HIN that is changed', () => {
  it('is a printed value like any other', async () => {
    await releasedHull(shop, 'H-1');
    await shop.act('/api/hulls/H-1/hins', { hin: 'TRZ00701A626' });
    await issued(shop, 'H-1');
    await shop.act('/api/hulls/H-1/hins', { hin: 'TRZ00702A626', reason: 'struck wrong' });
    await lookedAt(service);
    const now = await newestOf(shop, 'H-1');
    expect(now).toMatchObject({ state: 'withdrawn', changed: [{ what: 'HIN' }] });
  });
});
