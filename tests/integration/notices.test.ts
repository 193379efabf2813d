import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ClaimView, DutyView, NoticeView, Recipient } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, PORT_SIDE, Shop, type Fields } from '../support/shop.js';
import { FREEZE } from '../support/write-samples-cases.js';
import { FILED } from '../support/write-samples-claims.js';

let service: RunningService;
let shop: Shop;
let hold: string;

const CONTENTS = {
  defect: 'The bond of the stringer grid may not have cured.',
  hazard: 'The grid may come loose under way.',
  measures: 'A dealer tests the bond and renews it.',
  undertaking: 'The test and the repair are free of charge.',
  ...{ manufacturer: 'Invented Boats', address: '1 Slip Road, Calder Bay', make: 'TS' },
};

/** Instants of the worked test of trade facts section 2.1: lot G-17 in five hulls, of which the first stays in the plant. */
const at = (day: string): Fields => ({ happenedAt: `${day}T15:00:00Z` });
const life = (hull: string, what: string, day: string, more: Fields = {}): Promise<string> =>
  shop.act(`/api/hulls/${hull}/life`, { what, ...at(day), ...more });
const duty = (): Promise<DutyView> => shop.read(`/api/holds/${hold}/duty`);
const notice = (): Promise<NoticeView> => shop.read('/api/notices/DN-1');
const recipients = (): Promise<Recipient[]> => shop.read('/api/notices/DN-1/recipients');
const say = (hull: string, what: string): Promise<string> =>
  shop.act(`/api/holds/${hold}/dispositions`, { hulls: [hull], what, ...at('2026-04-10') });
const refused = async (path: string, fields: Fields): Promise<readonly [number, string]> => {
  const { status, body } = await shop.post(path, shop.envelope(fields));
  return [status, String((body as Fields)['type'])];
};
const owners: Record<string, string> = {};

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.receive('G-17', 'RES-VE');
  for (const hull of ['H1', 'H2', 'H3', 'H4', 'H5']) {
    await shop.startHull(hull);
    await shop.layer(hull, 'L2', [{ lot: 'G-17', amount: kg(5) }]);
  }
  for (const hull of ['H2', 'H3', 'H4', 'H5']) {
    await life(hull, 'left the place of manufacture', '2026-01-20');
    await life(hull, 'at dealer', '2026-01-22', { dealer: 'NLM' });
    await life(hull, 'sold to first purchaser', '2026-02-01');
    owners[hull] = await shop.act(`/api/hulls/${hull}/owners`, {
      what: 'first purchaser',
      owner: { name: `Owner of ${hull}`, address: `${hull} Quay Street, Calder Bay` },
    });
  }
  owners['H2 later'] = await shop.act('/api/hulls/H2/owners', {
    ...{ what: 'later owner', owner: { name: 'Second Owner', address: '9 Mole Lane' }, ...at('2026-02-20') },
  });
  hold = await shop.act('/api/lots/G-17/holds', { kind: 'safety', reason: 'gel time', ...at('2026-02-25') });
}, 60_000);
afterAll(() => service.close());

describe('the duty to notify', () => {
  it('is not decided by default: nothing runs, and the earliest arguable day is shown', async () => {
    const view = await duty();
    expect(view.decisions).toEqual([]);
    expect(view.dates.map(({ state }) => state)).toEqual(['does not run', 'does not run', 'does not run']);
    expect(view.arguable).toEqual([{ on: '2026-02-25', what: 'the hold was placed' }]);
    expect(view.says).toContain('responsible person with counsel');
    expect(await refused(`/api/holds/${hold}/notices`, { code: 'DN-0', contents: CONTENTS })).toEqual([
      409,
      '/problems/no-duty',
    ]);
  });

  it('a report on a hull that had left makes the earliest arguable day earlier', async () => {
    await shop.defect('H3-H', { layer: 'L2', ...at('2026-02-10') });
    expect((await duty()).arguable[0]).toEqual({
      on: '2026-02-10',
      what: 'a defect (dry-spot) was reported on hull H3, which had left',
    });
  });

  it('decided as none, sets no date running', async () => {
    const none = {
      decision: 'none',
      discoveredOn: '2026-02-26',
      decidedBy: 'QUA-1',
      why: 'cosmetic',
      ...at('2026-02-26'),
    };
    await shop.act(`/api/holds/${hold}/duty-decisions`, none);
    expect((await duty()).dates[0]).toMatchObject({ dueOn: null, state: 'does not run' });
  });

  it('names the rule that is failed, and was not discovered after it was decided', async () => {
    const given = { discoveredOn: '2026-03-02', decidedBy: 'QUA-1', why: 'x', ...at('2026-03-02') };
    const path = `/api/holds/${hold}/duty-decisions`;
    expect(await refused(path, { ...given, decision: 'fails a rule' })).toEqual([400, '/problems/invalid-request']);
    expect(await refused(path, { ...given, decision: 'none', discoveredOn: '2026-03-03' })).toEqual([
      422,
      '/problems/discovered-after-decision',
    ]);
    expect(await refused(path, given)).toEqual([400, '/problems/invalid-request']);
  });
});

describe('the worked test of lot G-17 (trade facts section 2.1)', () => {
  it('is due 30 days after the day of discovery, for the four hulls that left', async () => {
    const { result } = await shop.receipt(`/api/holds/${hold}/duty-decisions`, {
      ...{ decision: 'substantial risk of injury', discoveredOn: '2026-03-02', decidedBy: 'QUA-1', why: 'bond' },
      ...at('2026-03-02'),
    });
    expect(result).toEqual({ decision: 'substantial risk of injury', noticeDue: '2026-04-01' });
    await shop.act(`/api/holds/${hold}/notices`, { code: 'DN-1', contents: CONTENTS, ...at('2026-03-10') });
    const view = await notice();
    expect(view.dates.slice(0, 2).map(({ dueOn }) => dueOn)).toEqual(['2026-04-01', '2026-04-01']);
    expect([view.hulls, view.contained, view.outside]).toEqual([['H2', 'H3', 'H4', 'H5'], ['H1'], []]);
    expect(view.figures.affected).toBe(4);
    expect(view.recipients).toEqual([
      { kind: 'dealer', known: 1, written: 0, returned: 0, noAddress: 0 },
      { kind: 'first purchaser', known: 4, written: 0, returned: 0, noAddress: 0 },
      { kind: 'later owner', known: 1, written: 0, returned: 0, noAddress: 0 },
    ]);
  });

  it('was given, mailed and reported after what it rests on: a mistyped year is refused with its field', async () => {
    const path = '/api/notices/DN-1/mailings';
    const early = { class: 'first-class mail', recipients: [{ hull: 'H2', dealer: 'NLM' }], ...at('2025-03-20') };
    const told = async (where: string, fields: Fields): Promise<unknown> =>
      ((await shop.post(where, shop.envelope(fields))).body['errors'] as unknown as unknown[])[0];
    const before = { pointer: '/happenedAt', detail: expect.stringMatching(/is from 2026-0.* on: .*before it/) };
    expect(await told(path, early)).toEqual(before);
    expect(await told(`/api/holds/${hold}/notices`, { code: 'DN-9', contents: CONTENTS, ...at('2025-03-10') })).toEqual(
      before,
    );
    expect(await told(`/api/holds/${hold}/scopes`, { minShare: 0.5, reason: 'x', ...at('2025-03-10') })).toEqual(
      before,
    );
    expect(
      await told('/api/notices/DN-1/reports', { what: 'initial', sentOn: '2025-03-20', ...at('2026-03-21') }),
    ).toMatchObject({ pointer: '/sentOn', detail: expect.stringContaining('discovery is 2026-03-02') });
  });

  it('goes to dealers, first purchasers and later owners, by the class of mail that each may have', async () => {
    const to = (hull: string, owner: string, proof: string): Fields => ({ hull, owner: owners[owner], proof });
    const faster = { class: 'more expeditious, in writing', ...at('2026-03-20') };
    const path = '/api/notices/DN-1/mailings';
    expect(await refused(path, { ...faster, recipients: [to('H2', 'H2', 'c1')] })).toEqual([
      422,
      '/problems/class-of-mail',
    ]);
    expect(await refused(path, { ...faster, recipients: [{ hull: 'H1', dealer: 'NLM' }] })).toEqual([
      422,
      '/problems/no-recipient',
    ]);
    await shop.act(path, { ...faster, recipients: ['H2', 'H3', 'H4', 'H5'].map((hull) => ({ hull, dealer: 'NLM' })) });
    await shop.act(path, {
      ...{ class: 'certified mail', ...at('2026-03-30') },
      recipients: ['H2', 'H3', 'H4', 'H5'].map((hull, i) => to(hull, hull, `certified no. ${i + 1}`)),
    });
    expect((await notice()).dates[0]).toMatchObject({ state: 'late', doneOn: null });
    await shop.act(path, { class: 'first-class mail', ...at('2026-04-01'), recipients: [to('H2', 'H2 later', 'x')] });
    expect((await notice()).dates[0]).toMatchObject({ state: 'done in time', doneOn: '2026-04-01' });
  });

  it('counts what was found, what is corrected, and whom no letter reached', async () => {
    await say('H2', 'found');
    await say('H3', 'found');
    await say('H4', 'checked');
    await say('H2', 'repaired');
    const letter = (await recipients()).find(({ owner }) => owner === owners['H5'])?.mailings[0]?.id ?? '';
    await shop.act(`/api/mailings/${letter}/returns`, { why: 'moved', ...at('2026-04-15') });
    expect(await refused(`/api/mailings/${letter}/returns`, { why: 'moved', ...at('2026-04-15') })).toEqual([
      409,
      '/problems/returned-already',
    ]);
    const view = await notice();
    expect(view.figures).toEqual({ affected: 4, discovered: 2, completed: 1, notNotified: 1 });
    expect(view.recipients[1]).toEqual({ kind: 'first purchaser', known: 4, written: 4, returned: 1, noAddress: 0 });
    expect((await recipients()).map(({ kind, hulls, state }) => [kind, hulls, state])).toEqual([
      ['dealer', ['H2', 'H3', 'H4', 'H5'], 'written to'],
      ...['H2', 'H3', 'H4'].map((hull) => ['first purchaser', [hull], 'written to']),
      ['first purchaser', ['H5'], 'returned'],
      ['later owner', ['H2'], 'written to'],
    ]);
  });

  it('starts the second clock by the initial report alone, and keeps the figures that were sent', async () => {
    const path = '/api/notices/DN-1/reports';
    expect(await refused(path, { what: 'follow-up', sentOn: '2026-05-01', ...at('2026-05-01') })).toEqual([
      422,
      '/problems/no-initial-report',
    ]);
    await shop.act(path, { what: 'initial', sentOn: '2026-04-01', ...at('2026-04-01') });
    expect((await notice()).dates[2]).toMatchObject({ dueOn: '2026-05-31', state: 'late' });
    await shop.act(path, { what: 'follow-up', sentOn: '2026-05-29', ...at('2026-05-29') });
    const view = await notice();
    expect(view.dates[2]).toMatchObject({ doneOn: '2026-05-29', state: 'done in time' });
    expect(view.reports[1]?.figures).toEqual({ affected: 4, discovered: 2, completed: 1, notNotified: 1 });
    expect(await refused(path, { what: 'initial', sentOn: '2026-04-02', ...at('2026-04-02') })).toEqual([
      409,
      '/problems/reported-already',
    ]);
  });
});

describe('a claim of a hull that a letter went to', () => {
  const claimed = async (hull: string, reportedOn: string): Promise<ClaimView> => {
    const told = { ...FILED, noticedOn: undefined, moisture: undefined, reportedOn, spots: [{ place: PORT_SIDE }] };
    const id = await shop.act(`/api/hulls/${hull}/claims`, { ...told, ...at('2026-06-01') });
    return shop.read(`/api/claims/${id}`);
  };

  it('counts as prompted when it was reported after the letter was mailed, unless somebody says otherwise', async () => {
    expect(await claimed('H4', '2026-03-19')).toMatchObject({ prompted: false, foundByReason: null });
    const after = await claimed('H3', '2026-03-21');
    expect(after).toMatchObject({
      ...{ prompted: true, foundBy: 'after a notice' },
      foundByReason: 'A letter of notice DN-1 was mailed on 2026-03-20, before it was reported.',
    });
    const why = { foundBy: 'owner or dealer', reason: 'They had not read it.', ...at('2026-06-02') };
    await shop.act(`/api/claims/${after.id}/marks`, why);
    expect(await shop.read(`/api/claims/${after.id}`)).toMatchObject({ prompted: false, foundByReason: why.reason });
  });

  it('is a day from which somebody might argue that the builder knew', async () => {
    expect((await duty()).arguable).toContainEqual({
      on: '2026-03-19',
      what: 'a claim (blister) of hull H4 was reported',
    });
  });

  it('cuts a case off the day before the first letter, when no hold went before', async () => {
    await shop.act('/api/cases', { code: 'C-1', title: 'Blisters', ...at('2026-06-03') });
    const { cutOff: _named, ...settings } = FREEZE;
    const { result } = await shop.receipt('/api/cases/C-1/settings', { ...settings, ...at('2026-06-03') });
    expect(result).toMatchObject({ cutOff: '2026-03-19', cutOffBecause: expect.stringContaining('first letter') });
  });
});

describe('personal data of a notice', () => {
  it('is in no journal entry, and gone once it is erased', async () => {
    const rows = await service.asOwner<{ entry: string }>('select entry from fact.journal');
    expect(rows.filter(({ entry }) => /Owner of H|Quay Street, Calder|Second Owner|Mole Lane/.test(entry))).toEqual([]);
    await shop.act(`/api/owners/${owners['H4']}/erasures`, { reason: 'asked for' });
    const h4 = (await recipients()).find(({ owner }) => owner === owners['H4']);
    expect(h4).toMatchObject({ name: null, address: null, state: 'written to' });
  });
});
