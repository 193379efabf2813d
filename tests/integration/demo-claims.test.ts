import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { CaseView, ClaimPage, ClaimView } from '@hull-record/contracts';
import { ACTS } from '../../apps/service/src/demo/acts.js';
import { BLISTER_CASE, BLISTERED } from '../../apps/service/src/demo/plan/claims.js';
import { planDemo } from '../../apps/service/src/demo/plan/plan.js';
import type { Step } from '../../apps/service/src/demo/plan/step.js';
import { asService } from '../../apps/service/src/platform/access/call.js';
import { startService, type RunningService } from '../support/service.js';

let service: RunningService;

const claims = planDemo().filter(({ act }) => act === 'fileClaim');
const hulls = new Set(claims.map(({ of }) => of));

/** What the claims of the plan rest on: the shop as it was opened, and the hulls that came back, begun and no more. */
const restsOn = ({ act, name, of, body }: Step): boolean =>
  ['registerPerson', 'registerDevice', 'registerDealer', 'registerMaterial', 'registerTank'].includes(act) ||
  ['registerModel', 'publishSchedule', 'registerMold', 'setWarrantyTerms', 'openCase', 'freezeCase'].includes(act) ||
  (act === 'startHull' && hulls.has(String(body['number']))) ||
  (act === 'recordLifeFact' && hulls.has(String(of)) && body['what'] === 'sold to first purchaser') ||
  act === 'fileClaim' ||
  (act === 'addPhoto' && name.includes('blistered'));

beforeAll(async () => {
  service = await startService({ roles: 'as opened' });
  await asService(async () => {
    for (const step of planDemo().filter(restsOn)) await ACTS[step.act]((useCase) => service.get(useCase), step);
  });
}, 300_000);
afterAll(() => service.close());

const read = async <T>(path: string): Promise<T> => {
  const answer = await fetch(`${service.url}${path}`, { headers: await service.signedIn('QUA-01') });
  return (await answer.json()) as T;
};

describe('the claims of the demo', () => {
  it('are one of each hull that came back, each a defect with its photos, within the terms where it was sold', async () => {
    const { items } = await read<ClaimPage>('/api/claims');
    expect(new Set(items.map(({ hull }) => hull))).toEqual(hulls);
    expect(items.map(({ kind, first, prompted }) => [kind, first, prompted])).toEqual(
      BLISTERED.map(() => ['blister', true, false]),
    );
    const views = await Promise.all(items.map(({ id }) => read<ClaimView>(`/api/claims/${id}`)));
    for (const view of views)
      expect(view).toMatchObject({ defects: [{ mark: 'D1' }], term: { modelYear: expect.any(Number) } });
    const within = views.map(({ term }) => term.within);
    expect(within).toContain(true);
    expect(within).not.toContain(false);
  });

  it('have one case, frozen and not looked at', async () => {
    expect(await read<CaseView>(`/api/cases/${BLISTER_CASE}`)).toMatchObject({
      ...{ looks: 0, verdict: null, history: [] },
      settings: [{ version: 1, settings: { kind: 'blister', reportLagDays: 0 } }],
    });
  });
});
