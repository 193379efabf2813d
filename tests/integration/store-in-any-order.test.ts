import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop, type Fields } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
let stories = 0;

beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
});
afterAll(() => service.close());

/** Something said of a lot with two drums, or drawn of it, at a minute of its own. */
interface Said {
  readonly what: 'draw' | 'hold' | 'reject' | 'accept' | 'state';
  /** A drum; 0: the lot, and nobody knows which drum. */
  readonly drum: 0 | 1 | 2;
  readonly state: string;
  readonly minute: number;
  readonly liftedAfter: number;
  /** When it is entered, among the others. */
  readonly entered: number;
}

const said: fc.Arbitrary<Said> = fc.record({
  what: fc.constantFrom('draw', 'draw', 'draw', 'hold', 'reject', 'accept', 'state'),
  drum: fc.constantFrom(0, 1, 2),
  state: fc.constantFrom('released', 'held', 'rejected'),
  minute: fc.integer({ min: 1, max: 400 }),
  liftedAfter: fc.integer({ min: 1, max: 200 }),
  entered: fc.nat(),
});
const week = fc.uniqueArray(said, { minLength: 3, maxLength: 10, selector: ({ minute }) => minute });

const time = (minute: number): string => new Date(Date.UTC(2026, 1, 2, 7, minute)).toISOString();

/** Lives a week with a lot of its own, entered in this order; a hold is lifted as soon as it is entered. */
const live = async (all: readonly Said[]): Promise<readonly string[]> => {
  stories += 1;
  const lot = `ANY-${stories}`;
  await shop.receive(lot, 'RES-VE', { happenedAt: time(0) });
  await shop.act(`/api/lots/${lot}/containers`, {
    containers: [1, 2].map((n) => ({ label: `${lot}-${n}`, kind: 'drum', amount: kg(500) })),
    happenedAt: time(0),
  });
  for (const each of all) await tell(lot, each);
  const found = await service.asOwner<{ minute: string; rule: string }>(
    `select right(l.code, 3) as minute, n.rule from fact.nonconformity n join fact.lot l on l.root = n.about_id
      where l.code like $1 || '-B-%' order by 1, 2`,
    [lot],
  );
  return [...new Set(found.map(({ minute, rule }) => `${minute} ${rule}`))];
};

const tell = async (lot: string, { what, drum, state, minute, liftedAfter }: Said): Promise<void> => {
  const happenedAt = time(minute);
  const container = drum === 0 ? {} : { container: `${lot}-${drum}` };
  if (what === 'draw') {
    const from: Fields = drum === 0 ? { lot } : container;
    await shop.mix(`${lot}-B-${String(minute).padStart(3, '0')}`, [{ ...from, amount: kg(1) }], { happenedAt });
  } else if (what === 'hold') {
    const id = await shop.act(`/api/lots/${lot}/holds`, { kind: 'quality', reason: 'x', ...container, happenedAt });
    await shop.act(`/api/holds/${id}/lifts`, { reason: 'y', happenedAt: time(minute + liftedAfter) });
  } else if (what === 'state') await shop.setState(lot, state, { happenedAt });
  else {
    const fact = { what: what === 'reject' ? 'rejected' : 'accepted', happenedAt };
    await shop.act(`/api/containers/${lot}-${drum || 1}/history`, fact);
  }
};

describe('what is said of a lot and its drums', () => {
  it('misses no use that it would have found on time, in whatever order it is entered', async () => {
    await fc.assert(
      fc.asyncProperty(week, async (all) => {
        const onTime = await live([...all].sort((a, b) => a.minute - b.minute));
        const inAnyOrder = await live([...all].sort((a, b) => a.entered - b.entered));
        expect(inAnyOrder).toEqual(expect.arrayContaining([...onTime]));
      }),
      { numRuns: 25 },
    );
  }, 120_000);
});
