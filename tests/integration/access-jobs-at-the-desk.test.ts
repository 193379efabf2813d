import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Cast } from '../support/access/cast.js';
import { type Job, pairsIn, testJobs } from '../support/access/jobs.js';
import { openShop, stockShop } from '../support/access/opened.js';
import { type RunningService, startService } from '../support/service.js';

let service: RunningService;
let cast: Cast;
beforeAll(async () => {
  service = await startService({ roles: 'as opened' });
  cast = await Cast.gather(service);
  await openShop(cast);
  await stockShop(cast);
  await cast.recorded('laminator', '/api/hulls', { number: 'H-1', model: 'TS86', mold: 'M-86-1' });
});
afterAll(() => service.close());

const owner = { name: 'Invented Owner', address: '1 Quay Street' };

/** From the jobs of the people of a plant: an administrator knows the people, quality the rules, warranty the boats sold. */
const JOBS: readonly Job[] = [
  {
    ...{ does: 'register a person', may: 'administrator', not: ['quality', 'shift lead', 'warranty', 'auditor'] },
    at: '/api/people',
    with: { badge: 'NEW-1', name: 'Somebody New', roles: ['laminator'] },
    gives: { code: 'NEW-1' },
  },
  {
    ...{ does: 'give a role', may: 'administrator', not: ['quality', 'shift lead', 'laminator', 'dealer'] },
    at: '/api/people/NEW-1/roles',
    with: { role: 'patcher' },
    gives: { badge: 'NEW-1', role: 'patcher' },
  },
  {
    ...{ does: 'end a role', may: 'administrator', not: ['quality', 'inspector', 'auditor'] },
    at: '/api/people/NEW-1/role-ends',
    with: { role: 'laminator', reason: 'works in the bay now' },
    gives: { badge: 'NEW-1', role: 'laminator' },
  },
  {
    ...{ does: 'register a device', may: 'administrator', not: ['quality', 'laminator', 'dealer'] },
    at: '/api/devices',
    with: { code: 'TAB-9', description: 'Tablet at mold 1', ratedForClassifiedArea: false },
    gives: { code: 'TAB-9' },
  },
  {
    ...{ does: 'take its credential from a lost device', may: 'administrator', not: ['shift lead', 'quality'] },
    at: '/api/devices/TAB-9/revocations',
    with: { reason: 'lost on the quay' },
    gives: { device: 'TAB-9' },
  },
  {
    ...{
      does: 'see what revoked devices sent',
      may: 'quality',
      not: ['administrator', 'auditor', 'shift lead', 'dealer'],
    },
    at: '/api/kept-entries',
    gives: [],
  },
  {
    ...{ does: 'see the tokens of programs', may: 'administrator', not: ['quality', 'auditor', 'receiving'] },
    at: '/api/tokens',
    gives: [],
  },
  {
    ...{ does: 'agree the rules of the plant', may: 'quality', not: ['shift lead', 'administrator', 'warranty'] },
    at: '/api/plant-rules',
    with: { marginRule: '3 C', shopWindow: null, barcolFraction: 0.95, reason: 'agreed' },
    gives: { marginRule: '3 C', barcolFraction: 0.95 },
  },
  {
    ...{ does: 'register a material', may: 'receiving', not: ['laminator', 'administrator', 'dealer'] },
    at: '/api/materials',
    with: { code: 'GEL-G', name: 'Gel coat, grey', role: 'gel coat', shelfLifeDays: 90 },
    gives: { code: 'GEL-G' },
  },
  {
    ...{ does: 'publish a schedule', may: 'quality', not: ['laminator', 'shift lead', 'inspector'] },
    at: '/api/models/TS86/schedules',
    with: { partKind: 'deck', version: 2, layers: [{ code: 'D1', name: 'Deck', materials: [{ material: 'RES-VE' }] }] },
    gives: { version: 2, layers: 1 },
  },
  {
    ...{ does: 'assign a HIN', may: 'quality', not: ['laminator', 'inspector', 'warranty', 'administrator'] },
    at: '/api/hulls/H-1/hins',
    with: { hin: 'TRZ00001A626' },
    gives: { hin: 'TRZ00001A626', warnings: [] },
  },
  {
    ...{ does: 'tell that a boat is at its dealer', may: 'warranty', not: ['dealer', 'laminator', 'inspector'] },
    at: '/api/hulls/H-1/life',
    with: { what: 'at dealer', dealer: 'NLM' },
    gives: { what: 'at dealer', nonconformities: [{ rule: 'left-before-release' }] },
  },
  {
    ...{ does: 'register an owner', may: 'warranty', not: ['quality', 'dealer', 'administrator', 'auditor'] },
    at: '/api/hulls/H-1/owners',
    with: { what: 'first purchaser', owner },
    ...{ gives: { what: 'first purchaser' }, as: 'owner' },
  },
  {
    ...{ does: 'see who owns a boat', may: 'warranty', not: ['laminator', 'quality', 'dealer', 'auditor'] },
    at: '/api/hulls/H-1/owners',
    gives: [{ what: 'first purchaser', owner }],
  },
  {
    ...{ does: 'erase what is known of an owner', may: 'administrator', not: ['quality', 'dealer', 'auditor'] },
    at: '/api/owners/{owner}/erasures',
    with: { reason: 'asked for' },
    gives: { erased: true },
  },
  {
    ...{ does: 'see the own hulls', may: 'dealer', not: ['warranty', 'quality', 'auditor', 'administrator'] },
    at: '/api/own-hulls',
    gives: { items: [{ number: 'H-1', hin: 'TRZ00001A626' }], next: null },
  },
  {
    ...{ does: 'read the whole record of a hull', may: 'auditor', not: ['dealer'] },
    at: '/api/hulls/H-1',
    gives: { number: 'H-1' },
  },
  {
    ...{ does: 'scrap a part', may: 'quality', not: ['inspector', 'shift lead', 'patcher'] },
    at: '/api/parts/H-1-H/scrapping',
    with: { reason: 'prerelease' },
    gives: { number: 'H-1-H' },
  },
];

describe('at the desk', () => {
  it('stand more than sixty pairs of somebody and something', () => expect(pairsIn(JOBS)).toBeGreaterThan(60));
  testJobs(() => cast, JOBS);

  it('quality may not release what has no layer, but is told what is in the way; the others are not', async () => {
    const asked = await cast.send('quality', '/api/hulls/H-1/releases', {});
    expect(asked.status).toBe(409);
    expect(asked.body['type']).not.toBe('/problems/not-allowed');
    for (const role of ['shift lead', 'inspector', 'warranty', 'administrator', 'dealer'] as const)
      expect(await cast.send(role, '/api/hulls/H-1/releases', {})).toMatchObject({
        status: 403,
        body: { type: '/problems/not-allowed' },
      });
  });
});

describe('a correction', () => {
  it('of the own entry is for who made it; of another’s it is for a shift lead or quality', async () => {
    const { body } = await cast.recorded('laminator', '/api/lots/MAT-1/losses', {
      ...{ what: 'spilled', reason: 'wet', amount: { quantity: 2, unit: 'kg', basis: 'weighed' } },
    });
    const correct = { corrects: body.id, reason: 'it was dry' };
    for (const role of ['receiving', 'inspector', 'patcher', 'warranty'] as const)
      expect(await cast.send(role, '/api/corrections', correct)).toMatchObject({
        status: 403,
        body: { type: '/problems/not-allowed', detail: expect.stringContaining('correct what another entered') },
      });
    await cast.recorded('laminator', '/api/corrections', correct);
    const other = await cast.recorded('receiving', '/api/lots/MAT-1/counts', { quantity: 990, unit: 'kg' });
    await cast.recorded('shift lead', '/api/corrections', { corrects: other.body.id, reason: 'counted twice' });
  });
});
