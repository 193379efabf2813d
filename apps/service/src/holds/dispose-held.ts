import { Injectable } from '@nestjs/common';
import type { DisposeHeld as Request } from '@hull-record/contracts';
import { assertAct } from '../platform/access/assert-act.js';
import { findPeople } from '../platform/facts/author.js';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findHold, type FoundHold } from '../platform/holds/find-hold.js';
import { HoldDispositionEntity } from '../platform/holds/hold-facts.entity.js';
import { loadHeldHulls } from '../platform/holds/load-held-hulls.js';
import { reachOfHold } from '../platform/holds/reach-of-hold.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { findHull } from '../platform/lookups/find-hull.js';
import { Unprocessable } from '../platform/refusals.js';
import { assertOpen } from './assert-open.js';

/** A hull, or a part that is in none, as the request named it. */
interface Named {
  readonly owner: string;
  readonly isHull: boolean;
  readonly name: string;
  readonly pointer: string;
}

/** Says of hulls that a hold reaches, or came to it after it was closed, what was found or done. A judgement without a look is for quality. */
@Injectable()
export class DisposeHeld {
  constructor(private readonly record: RecordFact) {}

  run(hold: string, request: Request): Promise<Receipt<{ what: string; hulls: number }>> {
    return this.record.run('held hull disposed', { ...request, hold }, async (fact) => {
      if (request.what === 'cleared') assertAct(fact, 'clear a held hull');
      const found = await findHold(fact.tx, hold);
      if (!found.closed) assertOpen(found);
      const named = await namedIn(fact, request);
      await assertOfHold(fact, found, named);
      if (found.closed) await assertCameLate(fact, found, named);
      const { what, note = null, evidence = null, doneBy } = request;
      const makers =
        doneBy.length === 0 ? [fact.author.personId] : [...(await findPeople(fact.tx, doneBy, (i) => `/doneBy/${i}`))];
      await fact.insertMany(
        HoldDispositionEntity,
        named.map(({ owner, isHull }) => ({
          ...{ holdId: found.id, hullId: isHull ? owner : null, partId: isHull ? null : owner },
          ...{ what, makers, note, evidence },
        })),
      );
      return { what, hulls: named.length };
    });
  }
}

const namedIn = async (fact: Fact, { hulls, parts }: Request): Promise<readonly Named[]> => {
  const named: Named[] = [];
  for (const [i, name] of hulls.entries())
    named.push({ owner: await findHull(fact.tx, name, `/hulls/${i}`), isHull: true, name, pointer: `/hulls/${i}` });
  for (const [i, name] of parts.entries()) named.push(await looseParts(fact, name, `/parts/${i}`));
  const once = new Map(named.map((each) => [each.owner, each]));
  return [...once.values()];
};

const looseParts = async (fact: Fact, name: string, pointer: string): Promise<Named> => {
  const owner = await findByCode(fact.tx, 'part', fact.author.plantId, name, pointer);
  const [joint] = await fact.tx.query<unknown[]>(`select from fact.joint j where j.part_id = $1 and ${standing('j')}`, [
    owner,
  ]);
  if (joint !== undefined)
    throw new Unprocessable('part-of-hull', `Part ${name} is in a hull: name the hull.`, pointer);
  return { owner, isHull: false, name, pointer };
};

/** Of a closed hold, something is said of those alone that came to it afterwards and wait for a word. */
const assertCameLate = async (fact: Fact, found: FoundHold, named: readonly Named[]): Promise<void> => {
  const { rows } = await loadHeldHulls(fact.tx, found);
  const waiting = new Set(rows.filter((row) => row.reached && !row.disposed).map(({ owner }) => owner));
  if (named.some(({ owner }) => !waiting.has(owner))) assertOpen(found);
};

/** What the hold has nothing to do with is a slip. What it was narrowed away from, or reached once, may still be said. */
const assertOfHold = async (fact: Fact, found: FoundHold, named: readonly Named[]): Promise<void> => {
  const kept = await fact.tx.query<{ owner: string }[]>(
    `select coalesce(r.hull_id, r.part_id) as owner from fact.hold_reached r where r.hold_id = $1 and ${standing('r')}`,
    [found.id],
  );
  const known = new Set([...kept, ...(await reachOfHold(fact.tx, found, found.scope))].map(({ owner }) => owner));
  const stray = named.find(({ owner }) => !known.has(owner));
  if (stray)
    throw new Unprocessable(
      'not-of-hold',
      `The hold has nothing to do with ${stray.name}: check the number.`,
      stray.pointer,
    );
};
