import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ClaimView, DefectView, Redactable } from '@hull-record/contracts';
import { verifyDatabase } from '../../apps/service/src/verify/verify-database.js';
import { wordsOf } from '../../apps/service/src/verify/words.js';
import { readAsOne } from '../../apps/service/src/platform/database/read-as-one.js';
import { KeyRing } from '../../apps/service/src/platform/journal/key-ring.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop, type Fields } from '../support/shop.js';
import { whereItIs } from '../support/where-it-is.js';
import { FILED } from '../support/write-samples-claims.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  for (const hull of ['R1', 'R2', 'R3']) await shop.startHull(hull);
}, 120_000);
afterAll(() => service.close());

const WORDING = { wording: 'blisters below the waterline', reason: 'it named somebody; by letter' };
const redact = async (kind: string, of: string, more: Fields = {}): Promise<Fields> =>
  (await shop.receipt('/api/text-redactions', { kind, of, ...WORDING, ...more })).result;
const lookOver = async () => {
  const keys = new Set(
    service
      .get(KeyRing)
      .all()
      .map(({ keyId }) => keyId),
  );
  return readAsOne(service.db, (tx) => verifyDatabase(tx, { keys, held: [] }));
};

describe('a text that names somebody', () => {
  it('lies apart from the journal, and is in no table after it was redacted; its commitment stays', async () => {
    const claim = await shop.act('/api/hulls/R1/claims', {
      ...FILED,
      symptoms: 'Yorick Tannenbluff saw blisters',
      spots: [{ ...(FILED['spots'] as Fields[])[0], note: 'shown by Yorick Tannenbluff' }],
    });
    const { defects } = await shop.read<ClaimView>(`/api/claims/${claim}`);
    await shop.act(`/api/claims/${claim}/decisions`, { decision: 'refused', reason: 'Mr Tannenbluff ran aground' });
    expect(await whereItIs(service, ['Tannenbluff'])).toEqual(['work.free_text']);
    expect(await shop.read(`/api/claims/${claim}`)).toMatchObject({ symptoms: 'Yorick Tannenbluff saw blisters' });

    const listed = await shop.read<Redactable>('/api/hulls/R1/redactable');
    expect(listed.texts.map(({ kind, mark, erasable }) => [kind, mark, erasable])).toEqual(
      expect.arrayContaining([
        ['claim', 'C1', true],
        ['claim decision', 'C1', true],
        ['defect', 'D1 of R1-H', true],
      ]),
    );
    expect(await redact('claim', claim)).toEqual({ original: 'erased', keptBecause: null });
    await redact('defect', String(defects[0]?.id));
    const decided = listed.texts.find(({ kind }) => kind === 'claim decision');
    await redact('claim decision', String(decided?.of));
    expect(await whereItIs(service, ['Tannenbluff'])).toEqual([]);

    expect((await shop.read<ClaimView>(`/api/claims/${claim}`)).symptoms).toMatch(
      /^blisters below the waterline \[redacted on 20\d\d-\d\d-\d\d\]$/,
    );
    expect((await shop.read<DefectView>(`/api/defects/${String(defects[0]?.id)}`)).note).toContain('[redacted on');
    const found = await lookOver();
    expect(found).toMatchObject({ faults: [], erased: { texts: 3 } });
    expect(wordsOf(found).join(' ')).toContain('3 texts; stored files were not looked at. Their commitments stay.');
  });

  it('is one text: a retry gives the same receipt, the same id with another text is refused', async () => {
    const sent = shop.envelope({ what: 'returned', note: 'brought by Quentin Ashlocke' });
    expect((await shop.post('/api/hulls/R2/life', sent)).status).toBe(201);
    expect((await shop.post('/api/hulls/R2/life', sent)).status).toBe(200);
    const other = await shop.post('/api/hulls/R2/life', { ...sent, note: 'brought by somebody else' });
    expect(other).toMatchObject({ status: 409, body: { type: '/problems/client-id-reused' } });
    const without = await shop.post('/api/hulls/R2/life', { ...sent, note: undefined });
    expect(without.status).toBe(409);
    await redact('life fact', String(sent['id']), { wording: 'brought back' });
    expect((await shop.post('/api/hulls/R2/life', sent)).status).toBe(200);
    expect(await whereItIs(service, ['Ashlocke'])).toEqual([]);
  });

  it('is kept apart while a legal hold lasts, and erased by the same act when it has ended', async () => {
    const hold = await shop.act('/api/hulls/R2/legal-holds', { reason: 'proceedings, file 12' });
    const of = await shop.act('/api/hulls/R2/life', { what: 'returned', note: 'towed by Barnaby Wexmoor' });
    expect(await redact('life fact', of, { wording: 'towed' })).toEqual({
      ...{ original: 'kept apart', keptBecause: 'Legal hold: proceedings, file 12' },
    });
    const one = async () =>
      (await shop.read<Redactable>('/api/hulls/R2/redactable')).texts.find((text) => text.of === of);
    expect(await one()).toMatchObject({ original: 'towed by Barnaby Wexmoor', redacted: { original: 'kept apart' } });
    expect((await one())?.text).toMatch(/^towed \[redacted/);
    expect(JSON.stringify(await shop.read('/api/hulls/R2'))).not.toContain('Wexmoor');
    await shop.act(`/api/legal-holds/${hold}/endings`, { reason: 'closed' });
    expect(await redact('life fact', of, { wording: 'towed' })).toMatchObject({ original: 'erased' });
    expect(await one()).toMatchObject({ original: null });
    expect(await whereItIs(service, ['Wexmoor'])).toEqual([]);
  });

  it('that was recorded before texts lay apart gets another wording, and is said to stay in the journal', async () => {
    const of = await shop.act('/api/hulls/R3/life', { what: 'returned' });
    // As the releases before this one wrote it.
    await service.asOwner(`update fact.life_fact set note = 'by Ottilie Greyvane' where id = '${of}'`);
    expect(await redact('life fact', of, { wording: 'by its owner' })).toEqual({
      ...{ original: 'in the journal', keptBecause: null },
    });
    expect(JSON.stringify(await shop.read('/api/hulls/R3'))).not.toContain('Greyvane');
    await service.asOwner(`update fact.life_fact set note = null where id = '${of}'`);
  });

  it('cannot be worded anew by a correction behind its redaction', async () => {
    const defect = await shop.defect('R3-H', { note: 'found by Perpetua Lindqvale' });
    await redact('defect', defect);
    const set = { kind: 'defect', note: 'found by Perpetua Lindqvale' };
    const again = await shop.post('/api/corrections', shop.envelope({ corrects: defect, reason: 'clearer', set }));
    expect(again).toMatchObject({ status: 409, body: { type: '/problems/redacted' } });
    const moved = { kind: 'defect', lengthMm: 9 };
    await shop.act('/api/corrections', { corrects: defect, reason: 'measured', set: moved });
    expect(JSON.stringify(await shop.read(`/api/facts/${defect}/versions`))).toContain('[redacted on');
    expect(await whereItIs(service, ['Lindqvale'])).toEqual([]);
    expect((await lookOver()).faults).toEqual([]);
  });

  it('that is gone without a recorded act, or was changed, is named by a look over the database', async () => {
    const of = await shop.act('/api/hulls/R3/life', { what: 'returned', note: 'first' });
    const [row] = await service.asOwner<{ note: string }>(`select note from fact.life_fact where id = '${of}'`);
    const name = row?.note ?? '';
    const kept = await service.asOwner<{ value: string; salt: string; entry_id: string }>(
      `select value, salt, entry_id from work.free_text where commitment = '${name}'`,
    );
    const named = async () => (await lookOver()).faults.map(({ what, table, id }) => [what, table, id]);
    await service.asOwner(`update work.free_text set value = 'second' where commitment = '${name}'`);
    expect(await named()).toEqual([['changed', 'work.free_text', name]]);
    await service.asOwner(`delete from work.free_text where commitment = '${name}'`);
    expect(await named()).toEqual([['removed', 'work.free_text', name]]);
    await service.asOwner(
      `insert into work.free_text values ('${name}', 'first', '${kept[0]?.salt ?? ''}', '${kept[0]?.entry_id ?? ''}')`,
    );
    expect(await named()).toEqual([]);
  });
});
