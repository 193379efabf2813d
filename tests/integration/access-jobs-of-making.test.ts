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
});
afterAll(() => service.close());

const kg = (quantity: number) => ({ quantity, unit: 'kg', basis: 'weighed' });
const at = (minute: number): string => new Date(Date.UTC(2026, 0, 6, 7, minute)).toISOString();
const made = (minute: number) => ({ startedAt: at(minute), endedAt: at(minute + 9), happenedAt: at(minute + 9) });
const place = { surface: 'shell', side: 'port', fromTransomMm: 2_000, girthMm: 600 };
const film = { what: 'wet film', unit: 'mil', equipment: 'MG-1', spots: [{ lastWet: 18, nextDry: 20 }] };

/** From the jobs of the people of a plant: the mold side makes, somebody else signs, the bay repairs, quality decides. */
const JOBS: readonly Job[] = [
  {
    ...{
      does: 'start a hull',
      may: 'laminator',
      not: ['receiving', 'inspector', 'quality', 'dealer', 'administrator'],
    },
    at: '/api/hulls',
    with: { number: 'H-1', model: 'TS86', mold: 'M-86-1', happenedAt: at(0) },
    gives: { number: 'H-1', part: 'H-1-H', scheduleVersion: 1 },
  },
  {
    ...{ does: 'record a layer', may: 'laminator', not: ['inspector', 'patcher', 'quality', 'warranty', 'auditor'] },
    at: '/api/parts/H-1-H/layers',
    with: { layer: 'L1', ...made(1), doneBy: ['LAM-9'], used: [{ lot: 'GEL-1', amount: kg(18) }] },
    ...{ gives: { nonconformities: [] }, as: 'gel' },
  },
  {
    ...{ does: 'log film readings', may: 'inspector', not: ['receiving', 'patcher', 'warranty', 'dealer'] },
    at: '/api/layers/{gel}/readings',
    with: { ...film, happenedAt: at(11) },
    gives: { inside: 1, outside: 0 },
  },
  {
    ...{ does: 'sign a hold point', may: 'inspector', not: ['laminator', 'shift lead', 'patcher', 'administrator'] },
    at: '/api/layers/{gel}/signatures',
    with: { happenedAt: at(12) },
    gives: { holdPoint: 'HP 1', identity: 'proved' },
  },
  {
    ...{ does: 'record the next layer', may: 'shift lead', not: ['inspector', 'dealer'] },
    at: '/api/parts/H-1-H/layers',
    with: { layer: 'L2', ...made(14), doneBy: ['LAM-9'], used: [{ lot: 'RES-1', amount: kg(20) }] },
    ...{ gives: { nonconformities: [] }, as: 'skin' },
  },
  {
    ...{ does: 'say what else was used in a layer', may: 'laminator', not: ['quality', 'receiving', 'auditor'] },
    at: '/api/layers/{skin}/used',
    with: { used: [{ lot: 'MAT-1', amount: kg(9) }], happenedAt: at(23) },
    gives: { kg: 9 },
  },
  {
    ...{ does: 'go on under nonconformance at night', may: 'shift lead', not: ['laminator', 'inspector', 'quality'] },
    at: '/api/go-ons',
    with: { part: 'H-1-H', layer: 'L3', rules: ['climate-outside'], reason: 'night shift', happenedAt: at(24) },
    gives: { rules: ['climate-outside'] },
  },
  {
    ...{ does: 'report a void', may: 'inspector', not: ['dealer', 'auditor', 'administrator'] },
    at: '/api/parts/H-1-H/defects',
    with: { kind: 'dry-spot', place, happenedAt: at(25) },
    ...{ gives: { mark: 'D1' }, as: 'void' },
  },
  {
    ...{ does: 'dispose of a defect', may: 'quality', not: ['inspector', 'patcher', 'shift lead', 'administrator'] },
    at: '/api/dispositions',
    with: { of: 'defect', about: '{void}', disposition: 'repair', reason: 'grind and fill', happenedAt: at(26) },
    gives: { disposition: 'repair' },
  },
  {
    ...{ does: 'record a repair', may: 'patcher', not: ['laminator', 'inspector', 'quality', 'dealer'] },
    at: '/api/parts/H-1-H/repairs',
    with: { defects: ['{void}'], procedure: 'Ground out 12:1.', doneBy: ['PAT-9'], happenedAt: at(27) },
    ...{ gives: { mark: 'R1' }, as: 'repair' },
  },
  {
    ...{ does: 'say what was used in a repair', may: 'patcher', not: ['laminator', 'warranty', 'quality'] },
    at: '/api/repairs/{repair}/used',
    with: { used: [{ lot: 'RES-1', amount: kg(1) }], happenedAt: at(28) },
    gives: { kg: 1 },
  },
  {
    ...{ does: 'read Barcol on a repair', may: 'patcher', not: ['laminator', 'receiving', 'dealer'] },
    at: '/api/repairs/{repair}/readings',
    with: { what: 'Barcol hardness', unit: 'Barcol', spots: [{ value: 41 }], happenedAt: at(29) },
    gives: { spots: [{ verdict: 'no limit' }] },
  },
  {
    ...{ does: 'accept a repair', may: 'inspector', not: ['patcher', 'shift lead', 'warranty', 'administrator'] },
    at: '/api/repairs/{repair}/acceptances',
    with: { accepted: true, happenedAt: at(30) },
    gives: { accepted: true },
  },
  {
    ...{ does: 'enter many touch-ups at once', may: 'patcher', not: ['inspector', 'receiving', 'auditor'] },
    at: '/api/parts/H-1-H/touch-ups',
    with: { spots: [{ zone: 'port topside', kind: 'pit', count: 3, largestMm: 2.5 }], doneBy: ['PAT-9'] },
    ...{ gives: { mark: 'T1' }, as: 'touches' },
  },
  {
    ...{ does: 'accept touch-ups', may: 'inspector', not: ['patcher', 'laminator', 'dealer'] },
    at: '/api/touch-ups/{touches}/acceptances',
    with: { accepted: true, happenedAt: at(32) },
    gives: { accepted: true },
  },
  {
    ...{ does: 'care for a mold', may: 'laminator', not: ['inspector', 'quality', 'dealer'] },
    at: '/api/molds/M-86-1/care',
    with: { what: 'waxed', doneBy: ['LAM-9'], happenedAt: at(33) },
    gives: { what: 'waxed' },
  },
  {
    ...{ does: 'read how a part was made', may: 'auditor', not: ['dealer'] },
    at: '/api/parts/H-1-H',
    gives: { number: 'H-1-H', layers: [{ record: { signature: { by: 'INS-9' } } }, {}, {}] },
  },
];

describe('where boats are made', () => {
  it('stand more than seventy pairs of somebody and something', () => expect(pairsIn(JOBS)).toBeGreaterThan(70));
  testJobs(() => cast, JOBS);
});
