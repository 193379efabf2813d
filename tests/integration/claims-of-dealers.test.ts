import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { randomUUID } from 'node:crypto';

import sharp from 'sharp';
import { statementsOf } from '../support/access/statements.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop, type Answer, type Fields } from '../support/shop.js';
import { FILED } from '../support/write-samples-claims.js';

let service: RunningService;
let shop: Shop;
let photo: Buffer;

/** Two dealers with a hull each. */
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.act('/api/dealers', { code: 'SAL', name: 'Saltmere Boats', place: 'Saltmere' });
  for (const [badge, dealer, number] of [
    ['D-OURS', 'NLM', 'OURS'],
    ['D-THEIRS', 'SAL', 'THEIRS'],
  ] as const) {
    await shop.act('/api/people', { badge, name: 'Desk', roles: ['dealer'], dealer });
    await shop.startHull(number);
    await shop.act(`/api/hulls/${number}/life`, { what: 'at dealer', dealer });
  }
  photo = await sharp({ create: { width: 9, height: 7, channels: 3, background: '#123456' } })
    .jpeg()
    .toBuffer();
});
afterAll(() => service.close());

const by = (badge: string, fields: Fields = {}): Fields => shop.envelope({ ...FILED, enteredBy: badge, ...fields });
const ask = async (badge: string, path: string): Promise<{ status: number; body: unknown }> => {
  const answer = await fetch(`${service.url}${path}`, { headers: await service.signedIn(badge) });
  return { status: answer.status, body: (await answer.json()) as unknown };
};
const told = ({ status, body }: { status: number; body: unknown }, number: string): string =>
  `${status} ${JSON.stringify(body)}`.replaceAll(number, 'N').replace(/"instance":"[^"]*"/, '');

describe('a dealer', () => {
  it('files a claim for an own hull, adds pictures, and sees what was decided, without what the desk thinks', async () => {
    const filed = await shop.post('/api/own-hulls/OURS/claims', by('D-OURS'));
    expect(filed).toMatchObject({ status: 201, body: { result: { mark: 'C1', defects: ['D1 of OURS-H'] } } });
    const path = `/api/own-hulls/OURS/claims/${filed.body.id}/photos`;
    const form = shop.envelope({ enteredBy: 'D-OURS', shows: 'HIN plate' });
    expect((await shop.postPhoto(path, form, photo)).status).toBe(201);
    await shop.act(`/api/claims/${filed.body.id}/decisions`, { decision: 'accepted', reason: 'seen by our own man' });
    const { body } = await ask('D-OURS', '/api/own-hulls/OURS/claims');
    expect(body).toMatchObject([
      { mark: 'C1', photos: ['HIN plate'], decision: { decision: 'accepted', paidPercent: null } },
    ]);
    expect(JSON.stringify(body)).not.toMatch(/seen by our own man|foundBy|prompted|term/);
  });

  it('cannot say that a claim was prompted, nor for whom it is filed', async () => {
    const more = await shop.post(
      '/api/own-hulls/OURS/claims',
      by('D-OURS', { foundBy: 'after a notice', dealer: 'SAL' }),
    );
    expect(more).toMatchObject({ status: 400, body: { errors: [{ pointer: '/foundBy' }, { pointer: '/dealer' }] } });
    const { body } = await shop.post('/api/own-hulls/OURS/claims', by('D-OURS', {}));
    expect(await shop.read(`/api/claims/${body.id}`)).toMatchObject({ prompted: false, dealer: 'NLM' });
  });

  it('is told of a hull of another the same as of none, by as many statements, and nothing is recorded', async () => {
    const sent = async (number: string): Promise<{ told: string; statements: number }> => {
      const { result, sql } = await statementsOf<Answer>(service.db, () =>
        shop.post(`/api/own-hulls/${number}/claims`, by('D-OURS', { id: randomUUID() })),
      );
      return { told: told(result, number), statements: sql.length };
    };
    const theirs = await sent('THEIRS');
    expect(theirs).toEqual(await sent('NO-SUCH'));
    expect(theirs.told).toMatch(/^404.*There is no hull N\./);
    expect(told(await ask('D-OURS', '/api/own-hulls/THEIRS/claims'), 'THEIRS')).toEqual(
      told(await ask('D-OURS', '/api/own-hulls/NO-SUCH/claims'), 'NO-SUCH'),
    );
    expect((await ask('D-THEIRS', '/api/own-hulls/THEIRS/claims')).body).toEqual([]);
  });

  it('cannot add a picture to a claim of another hull, own or not', async () => {
    const filed = await shop.post('/api/own-hulls/THEIRS/claims', by('D-THEIRS'));
    const add = (number: string, claim: string): Promise<Answer> =>
      shop.postPhoto(
        `/api/own-hulls/${number}/claims/${claim}/photos`,
        shop.envelope({ enteredBy: 'D-OURS', shows: 'other' }),
        photo,
      );
    const id = randomUUID();
    expect(told(await add('OURS', filed.body.id), filed.body.id)).toEqual(told(await add('OURS', id), id));
    expect((await add('THEIRS', filed.body.id)).status).toBe(404);
    expect((await ask('D-OURS', `/api/claims/${filed.body.id}`)).status).toBe(403);
  });
});
