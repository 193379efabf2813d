import { hullStateAfter, type HoldScope } from '@hull-record/trade';
import type { HoldPlaced } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { whereabouts } from '../platform/life/whereabouts.js';
import { HoldReachedEntity, HoldScopeEntity } from '../platform/holds/hold-facts.entity.js';
import { reachOfHold, type HeldOn, type ReachedOwner } from '../platform/holds/reach-of-hold.js';
import { Unprocessable } from '../platform/refusals.js';
import { HoldEntity } from '../platform/store/hold.entity.js';

/**
 * Writes a hold, how far it reaches, and the list of those it reaches as it is known now: what is found of them later is
 * read against this list.
 */
export const writeHold = async (
  fact: Fact,
  on: Omit<HeldOn, 'plantId'>,
  { kind, reason }: Pick<HoldEntity, 'kind' | 'reason'>,
  scope: HoldScope,
): Promise<HoldPlaced> => {
  const holdId = await fact.insert(HoldEntity, { ...on, kind, reason });
  await writeScope(fact, holdId, 1, scope, null);
  const reach = await reachOfHold(fact.tx, { ...on, plantId: fact.author.plantId }, scope);
  const reached = reach.filter((each) => each.reached);
  const states = await statesOf(fact, reached);
  await fact.insertMany(
    HoldReachedEntity,
    reached.map(({ owner, hullId, kg, share, possibly }) => ({
      ...{ holdId, hullId, partId: hullId === null ? owner : null, kg, share, possibly },
      state: states.get(owner) ?? hullStateAfter(null, null),
    })),
  );
  return { kind, reached: reached.length, below: reach.length - reached.length, nonconformities: fact.nonconformities };
};

/** A zone that is misspelled would reach no layer at all, and a hold that holds nothing would look like one that does. */
const assertZone = async ({ tx, author }: Fact, zone: HoldScope['zone']): Promise<void> => {
  if (zone === null) return;
  const rows = await tx.query<{ zone: string }[]>(
    `select distinct y.zone from fact.schedule s join fact.schedule_layer y on y.schedule_id = s.id
     where s.plant_id = $1 order by y.zone`,
    [author.plantId],
  );
  const zones = rows.map((row) => row.zone);
  if (zones.includes(zone)) return;
  const known = zones.length === 0 ? 'There is no laminate schedule yet.' : `Zones are: ${zones.join(', ')}.`;
  throw new Unprocessable('unknown-zone', `No laminate schedule has the zone "${zone}". ${known}`, '/zone');
};

/** Writes how far a hold reaches from now on. Throws Unprocessable for a zone that there is not. */
export const writeScope = async (
  fact: Fact,
  holdId: string,
  turn: number,
  { minShare, zone, from, until }: HoldScope,
  reason: string | null,
): Promise<string> => {
  await assertZone(fact, zone);
  return fact.insert(HoldScopeEntity, {
    ...{ holdId, turn, minShare, zone, reason },
    madeFrom: from === null ? null : new Date(from),
    madeUntil: until === null ? null : new Date(until),
  });
};

interface Now {
  readonly id: string;
  readonly now: { readonly what: string; readonly dealer: string | null } | null;
}

const statesOf = async (fact: Fact, owners: readonly ReachedOwner[]) => {
  const rows = await fact.tx.query<Now[]>(
    `select h.id, ${whereabouts('h.id')} as now from fact.hull h where h.id = any($1)`,
    [owners.flatMap(({ hullId }) => (hullId === null ? [] : [hullId]))],
  );
  return new Map(rows.map(({ id, now }) => [id, hullStateAfter(now?.what ?? null, now?.dealer ?? null)]));
};

/** The scope that a request asks for; what it leaves out bounds nothing. */
export const scopeAsked = (asked: {
  readonly minShare?: number | undefined;
  readonly zone?: string | undefined;
  readonly from?: string | undefined;
  readonly until?: string | undefined;
}): HoldScope => ({
  minShare: asked.minShare ?? 0,
  zone: asked.zone ?? null,
  from: asked.from ?? null,
  until: asked.until ?? null,
});
