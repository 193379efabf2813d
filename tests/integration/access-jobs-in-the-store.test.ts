import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Cast } from '../support/access/cast.js';
import { type Job, lot, pairsIn, testJobs } from '../support/access/jobs.js';
import { openShop } from '../support/access/opened.js';
import { type RunningService, startService } from '../support/service.js';

let service: RunningService;
let cast: Cast;
beforeAll(async () => {
  service = await startService({ roles: 'as opened' });
  cast = await Cast.gather(service);
  await openShop(cast);
});
afterAll(() => service.close());

const kg = (quantity: number) => ({ quantity, unit: 'kg', basis: 'weighed' });

/** From the jobs of the people of a plant: receiving books in, labels, counts; the mold side draws; quality decides. */
const JOBS: readonly Job[] = [
  {
    ...{ does: 'book in a lot with its certificate', may: 'receiving' },
    ...{ not: ['laminator', 'inspector', 'patcher', 'warranty', 'dealer', 'auditor', 'administrator'] },
    at: '/api/lots',
    with: lot('RES-7', 'RES-VE', { state: 'quarantined', certificate: { viscosity: 1.5 } }),
    ...{ gives: { code: 'RES-7', nonconformities: [] }, as: 'lot' },
  },
  {
    ...{ does: 'label the containers of a lot', may: 'receiving', not: ['laminator', 'quality', 'dealer'] },
    at: '/api/lots/RES-7/containers',
    with: { containers: [{ label: 'DRUM-7', kind: 'drum', amount: kg(200), place: 'Bay 2' }] },
    gives: { labels: ['DRUM-7'] },
  },
  {
    ...{ does: 'release a lot out of quarantine', may: 'receiving', not: ['laminator', 'shift lead', 'patcher'] },
    at: '/api/lots/RES-7/states',
    with: { state: 'released', reason: 'certificate is there' },
    gives: { state: 'released' },
  },
  {
    ...{ does: 'count what is left of a lot', may: 'receiving', not: ['laminator', 'inspector', 'dealer'] },
    at: '/api/lots/RES-7/counts',
    with: { quantity: 1_000, unit: 'kg' },
    gives: { kg: 1_000, differenceKg: 0 },
  },
  {
    ...{ does: 'move a drum to the mold', may: 'laminator', not: ['warranty', 'dealer', 'auditor'] },
    at: '/api/containers/DRUM-7/history',
    with: { what: 'moved', place: 'Mold 1' },
    gives: { what: 'moved' },
  },
  {
    ...{ does: 'mix a bucket', may: 'laminator', not: ['inspector', 'quality', 'dealer', 'administrator'] },
    at: '/api/mixes',
    with: { code: 'BUCKET-14', inputs: [{ lot: 'RES-7', amount: kg(12) }] },
    gives: { code: 'BUCKET-14' },
  },
  {
    ...{ does: 'book what was spilled', may: 'laminator', not: ['warranty', 'auditor', 'dealer'] },
    at: '/api/lots/RES-7/losses',
    with: { what: 'spilled', reason: 'pail tipped', amount: kg(2) },
    gives: { what: 'spilled', kg: 2 },
  },
  {
    ...{ does: 'put a lot on hold when something is odd', may: 'inspector', not: ['laminator', 'dealer', 'auditor'] },
    at: '/api/lots/RES-7/holds',
    with: { kind: 'quality', reason: 'gel time is short' },
    ...{ gives: { kind: 'quality' }, as: 'hold' },
  },
  {
    ...{ does: 'lift a hold', may: 'quality', not: ['inspector', 'receiving', 'shift lead', 'administrator'] },
    at: '/api/holds/{hold}/lifts',
    with: { reason: 'retested' },
    gives: { lifted: true },
  },
  {
    ...{ does: 'put a lot on hold for a claim', may: 'warranty', not: ['dealer', 'patcher'] },
    at: '/api/lots/RES-7/holds',
    with: { kind: 'safety', reason: 'blisters on two boats' },
    gives: { kind: 'safety' },
  },
  {
    ...{ does: 'retest a lot for a longer life', may: 'quality', not: ['receiving', 'laminator'] },
    at: '/api/lots/RES-7/retests',
    with: { expiresOn: '2026-09-30', result: 'within the data sheet', certificate: { viscosity: 1.5 } },
    gives: { expiresOn: '2026-09-30' },
  },
  {
    ...{ does: 'register a tank', may: 'quality', not: ['receiving', 'laminator', 'administrator'] },
    at: '/api/tanks',
    with: { code: 'T-7', material: 'RES-VE', capacityKg: 900 },
    gives: { code: 'T-7' },
  },
  {
    ...{ does: 'fill a tank', may: 'shift lead', not: ['laminator', 'inspector', 'quality', 'dealer'] },
    at: '/api/tanks/T-7/fills',
    with: { code: 'FILL-1', heel: null, inputs: [{ lot: 'RES-7', amount: kg(100) }] },
    gives: { code: 'FILL-1' },
  },
  {
    ...{ does: 'see what is in the store', may: 'auditor', not: ['dealer'] },
    at: '/api/lots/RES-7',
    gives: { code: 'RES-7', supplierLot: 'S-RES-7' },
  },
  {
    ...{ does: 'see where a lot went', may: 'warranty', not: ['dealer'] },
    at: '/api/lots/RES-7/hulls',
    gives: { items: [] },
  },
];

describe('in the store', () => {
  it('stand more than sixty pairs of somebody and something', () => expect(pairsIn(JOBS)).toBeGreaterThan(60));
  testJobs(() => cast, JOBS);
});
