import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { DefectView, PartView, Redactable } from '@hull-record/contracts';
import sharp from 'sharp';
import { readAsOne } from '../../apps/service/src/platform/database/read-as-one.js';
import { KeyRing } from '../../apps/service/src/platform/journal/key-ring.js';
import { verifyDatabase } from '../../apps/service/src/verify/verify-database.js';
import { readPages, solid } from '../support/read-pdf.js';
import { printed } from '../support/read-record.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';
import { whereItIs } from '../support/where-it-is.js';
import { REPAIRED } from '../support/write-samples-claims.js';

let service: RunningService;
let shop: Shop;
let repair: string;
let digest: string;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.act('/api/people', { badge: 'D-NLM', name: 'Desk', roles: ['dealer'], dealer: 'NLM' });
  await shop.startHull('P1');
  await shop.act('/api/hulls/P1/life', { what: 'at dealer', dealer: 'NLM' });
  const reported = { ...REPAIRED, enteredBy: 'D-NLM', note: 'Struck by Yorick Tannenbluff.' };
  repair = await shop.act('/api/own-hulls/P1/outside-repairs', reported);
  const photo = await sharp({ create: { width: 9, height: 7, channels: 3, background: '#123456' } })
    .jpeg()
    .toBuffer();
  const form = shop.envelope({ enteredBy: 'D-NLM', shows: 'finished' });
  const added = await shop.postPhoto(`/api/own-hulls/P1/outside-repairs/${repair}/photos`, form, photo);
  digest = String(added.body.result['originalSha256']).slice(0, 12);
});
afterAll(() => service.close());

const textOf = async (path: string, badge?: string): Promise<string> => {
  const answer = await fetch(`${service.url}${path}`, { headers: await service.signedIn(badge) });
  if (answer.status !== 200) throw new Error(`${answer.status} ${await answer.text()}`);
  return solid(await readPages(Buffer.from(await answer.arrayBuffer())));
};
const verified = async () => {
  const keys = new Set(
    service
      .get(KeyRing)
      .all()
      .map(({ keyId }) => keyId),
  );
  return readAsOne(service.db, (tx) => verifyDatabase(tx, { keys, held: [] }));
};

/** What every cut prints. */
const TOLD = [
  ...['outside repair, at Yard of the dealer', 'not witnessed by the plant', 'as told: vinyl ester of the yard'],
  ...['2026-01-05', 'Ground out, laid up, faired.'],
];

describe('the build record', () => {
  it.each(['internal', 'expert'])('in its cut %s says of an outside repair all that is known of it', async (cut) => {
    const text = await textOf(`/api/hulls/P1/build-record.pdf?cut=${cut}`);
    for (const words of [
      ...TOLD,
      'work sheet 118; evidence: work sheet, photos; reported by Northlight Marine (NLM)',
      'Struck by Yorick Tannenbluff.',
      `1 photo, SHA-256 of the original begins ${digest} (finished)`,
    ])
      expect(text).toContain(printed(words));
  });

  it('in the cut for a dealer leaves out what was noted freely and from whom it is known, and names the dealer as the life of the boat does', async () => {
    const text = await textOf('/api/own-hulls/P1/build-record.pdf', 'D-NLM');
    for (const words of [...TOLD, 'somebody there; evidence: left out here; reported by Northlight Marine (NLM)'])
      expect(text).toContain(printed(words));
    for (const words of ['Tannenbluff', 'work sheet']) expect(text).not.toContain(printed(words));
  });
});

describe('the note of an outside repair', () => {
  it('lies apart, is redacted on every page and paper, and the journal is whole', async () => {
    expect(await whereItIs(service, ['Tannenbluff'])).toEqual(['work.free_text']);
    const { texts, photos } = await shop.read<Redactable>('/api/hulls/P1/redactable');
    expect(texts.map(({ kind, mark, erasable }) => [kind, mark, erasable])).toContainEqual([
      'repair',
      'R1 of P1-H',
      true,
    ]);
    expect(photos.map(({ mark }) => mark)).toEqual(['R1 of P1-H, finished']);
    const redaction = { kind: 'repair', of: repair, wording: 'struck a piling', reason: 'it named somebody' };
    expect((await shop.receipt('/api/text-redactions', redaction)).result).toMatchObject({ original: 'erased' });
    expect(await whereItIs(service, ['Tannenbluff'])).toEqual([]);
    expect((await shop.read<PartView>('/api/parts/P1-H')).repairs[0]?.note).toMatch(/^struck a piling \[redacted on /);
    expect(await textOf('/api/hulls/P1/build-record.pdf')).toContain(printed('struck a piling [redacted on'));
    expect(await verified()).toMatchObject({ faults: [], erased: { texts: 1 } });
  });
});

describe('an outside repair that was withdrawn', () => {
  it('goes with its photos and leaves its defect open; the record tells it, and verify finds nothing', async () => {
    await shop.judge(repair, true);
    await shop.correct(repair);
    const { repairs, defects } = await shop.read<PartView>('/api/parts/P1-H');
    expect([repairs, defects.map(({ mark, state }) => [mark, state])]).toEqual([[], [['D1', 'open']]]);
    const [{ standing } = { standing: -1 }] = await service.asOwner<{ standing: number }>(
      `select count(*)::int as standing from fact.repair_photo f
       where not exists (select from fact.correction c where c.corrects = f.id)`,
    );
    expect(standing).toBe(0);
    expect((await shop.read<DefectView>(`/api/defects/${String(defects[0]?.id)}`)).repairs).toEqual([]);
    const text = await textOf('/api/hulls/P1/build-record.pdf');
    expect(text).toContain(printed('Record of repair R1 of P1-H'));
    expect((await verified()).faults).toEqual([]);
    const dealer = await fetch(`${service.url}/api/own-hulls/P1/outside-repairs`, {
      headers: await service.signedIn('D-NLM'),
    });
    expect(await dealer.json()).toMatchObject({ repairs: [], openDefects: [{ mark: 'D1', state: 'open' }] });
  });
});

it('a repair of the plant is of no dealer, by the rule of the database itself', async () => {
  await expect(service.asOwner(`update fact.repair set outside = null where id = '${repair}'`)).rejects.toThrow(
    /repair_of_a_dealer_is_outside/,
  );
});
