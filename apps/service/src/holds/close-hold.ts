import { Injectable } from '@nestjs/common';
import type { CloseHold as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findHold, type FoundHold } from '../platform/holds/find-hold.js';
import { loadHeldHulls } from '../platform/holds/load-held-hulls.js';
import { recomputingHold } from '../platform/holds/recomputing-hold.js';
import { standing } from '../platform/facts/standing.js';
import { loadBalance } from '../platform/store/load-balance.js';
import { Conflict } from '../platform/refusals.js';
import { assertOpen } from './assert-open.js';
import { endHold } from './end-hold.js';

export interface Closed {
  readonly closed: true;
  readonly hulls: number;
  readonly warnings: readonly string[];
}

/**
 * Closes a hold of which every hull is disposed of, or says which are not.
 *
 * It looks while the gate of the plant is closed: nothing is said of a hull, and no hull comes to it, between its look
 * and its word; of two who close at once, the second is told.
 */
@Injectable()
export class CloseHold {
  constructor(private readonly record: RecordFact) {}

  run(hold: string, request: Request): Promise<Receipt<Closed>> {
    return this.record.run(
      'hold closed',
      { ...request, hold },
      async (fact) => {
        const found = await findHold(fact.tx, hold);
        assertOpen(found);
        const hulls = await assertAllDisposed(fact, found);
        await endHold(fact, found, request.reason, true);
        await warnOfRest(fact, found);
        return { closed: true as const, hulls, warnings: fact.warnings };
      },
      { gate: 'closed', genealogy: 'alone' },
    );
  }
}

/** How many names a refusal lists. */
const NAMED = 50;

const assertAllDisposed = async (fact: Fact, found: FoundHold): Promise<number> => {
  if ((await recomputingHold(fact.tx, found)) !== null)
    throw new Conflict('being-recomputed', 'Where it went is being worked out anew after a correction: close it then.');
  const { rows } = await loadHeldHulls(fact.tx, found);
  const reached = rows.filter((row) => row.reached);
  const done = new Set(rows.filter((row) => row.disposed).map(({ hull, part }) => hull ?? part ?? ''));
  const open = [
    ...new Set([
      ...reached.filter((row) => !row.disposed).map(({ hull, part }) => hull ?? part ?? ''),
      ...(await stillFaulty(fact, found)).filter((name) => !done.has(name)),
    ]),
  ];
  if (open.length > 0)
    throw new Conflict(
      'hulls-not-disposed',
      `${open.length} of ${reached.length} hulls are not disposed of: say what was found or done of each.`,
      undefined,
      { hulls: open.slice(0, NAMED), count: open.length },
    );
  return reached.length;
};

/** Where the fault was found and nothing done about it yet, however far the hold was narrowed since. */
const FAULTY = `
  select coalesce(n.as_printed, p.number) as name from (
    select distinct on (coalesce(d.hull_id, d.part_id)) d.hull_id, d.part_id, d.what from fact.hold_disposition d
    where d.hold_id = $1 and ${standing('d')}
    order by coalesce(d.hull_id, d.part_id), d.happened_at desc, d.recorded_at desc, d.id desc) newest
  left join fact.hull_number n on n.hull_id = newest.hull_id and n.kind = 'hull number'
  left join fact.part p on p.id = newest.part_id
  where newest.what = 'found' order by 1`;

const stillFaulty = async (fact: Fact, { id }: FoundHold): Promise<readonly string[]> =>
  (await fact.tx.query<{ name: string }[]>(FAULTY, [id])).map(({ name }) => name);

/** What is left of a lot may be used again once its hold is over. */
const warnOfRest = async (fact: Fact, { lotId, containerId }: FoundHold): Promise<void> => {
  if (lotId === null || containerId !== null) return;
  const { lot, leftKg } = await loadBalance(fact.tx, lotId);
  if (leftKg > 1e-6)
    fact.warn(
      `By the book ${Number(leftKg.toPrecision(4))} kg of lot ${lot} are left, and no hold stops them now: reject the lot, or book what was scrapped.`,
    );
};
