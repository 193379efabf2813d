import { expect, it } from '@jest/globals';
import type { Role } from '@hull-record/contracts';
import { countRows } from '../fact-rows.js';
import type { Fields } from '../shop-stock.js';
import { BADGES, type Cast } from './cast.js';
import type { Reply } from './client.js';

/** Something that somebody comes to do, who may, who may not, and what comes of it. */
export interface Job {
  /** What is done, in words that follow `may`. */
  readonly does: string;
  /** Path; `{name}` stands for the id of what an earlier job made under that name. */
  readonly at: string;
  /** What is recorded; without it the path is asked. `{name}` stands for an id here too. */
  readonly with?: Fields;
  readonly may: Role;
  readonly not: readonly Role[];
  /** What the answer holds: the result of a receipt, or fields of what was asked. */
  readonly gives: unknown;
  /** Name under which later jobs know the id of what this one made. */
  readonly as?: string;
}

/** A lot as it is received. */
export const lot = (code: string, material: string, more: Fields = {}): Fields => ({
  ...{ code, material, supplier: 'Aldermoor Resins', supplierLot: `S-${code}`, state: 'released' },
  amount: { quantity: 1_000, unit: 'kg', basis: 'weighed' },
  ...more,
});

/** How many pairs of somebody and something the jobs hold. */
export const pairsIn = (jobs: readonly Job[]): number => jobs.reduce((sum, { not }) => sum + 1 + not.length, 0);

/** Makes a test of each pair: first those who may not, with nothing recorded, then who may, in the order of the jobs. */
export const testJobs = (cast: () => Cast, jobs: readonly Job[]): void => {
  const ids = new Map<string, string>();
  for (const job of jobs) {
    for (const role of job.not)
      it(`${role} may not ${job.does}`, async () => {
        const before = await countRows(cast().service);
        expect(await does(cast(), role, job, ids)).toMatchObject({
          status: 403,
          body: { type: '/problems/not-allowed', status: 403, detail: expect.stringContaining('not for your roles') },
        });
        expect(await countRows(cast().service)).toEqual(before);
      });
    it(`${job.may} may ${job.does}`, async () => {
      const { status, body } = await does(cast(), job.may, job, ids);
      const asks = job.with === undefined;
      expect([status, asks ? body : body.result]).toMatchObject([asks ? 200 : 201, job.gives]);
      if (!asks) expect(await authorOf(cast(), body.id)).toBe(BADGES[job.may]);
      if (job.as !== undefined) ids.set(job.as, body.id);
    });
  }
};

const does = (cast: Cast, role: Role, { at, with: fields }: Job, ids: ReadonlyMap<string, string>): Promise<Reply> => {
  const named = (text: string): string => text.replace(/\{(\w+)\}/g, (_, name: string) => idOf(ids, name));
  if (fields === undefined) return cast.as(role).get(named(at));
  return cast.send(role, named(at), JSON.parse(named(JSON.stringify(fields))) as Fields);
};

const idOf = (ids: ReadonlyMap<string, string>, name: string): string => {
  const id = ids.get(name);
  if (id === undefined) throw new Error(`No job before this one made ${name}.`);
  return id;
};

/** Who recorded an entry, by the record itself. */
const authorOf = async ({ service }: Cast, entry: string): Promise<string | undefined> => {
  const [row] = await service.asOwner<{ badge: string }>(
    "select p.badge from fact.journal j join fact.person p on p.root = j.person_id where j.id = $1 and j.identity = 'proved'",
    [entry],
  );
  return row?.badge;
};
