import type { FileClaim } from '@hull-record/contracts';
import type { Skin } from '@hull-record/trade';
import type { EntityManager } from 'typeorm';
import type { Fact } from '../platform/facts/fact.js';
import { firstDayOf } from '../platform/lookups/first-day-of.js';
import { partOfHull, partsOfHull } from '../platform/lookups/find-part-of-hull.js';
import { keepText } from '../platform/texts/keep-text.js';
import { writeDefect } from '../platform/defects/write-defect.js';
import { InvalidRequest } from '../platform/refusals.js';
import { ClaimEntity } from './claim.entity.js';
import { photosAsked } from './photos-asked.js';
import { surveySays } from './survey-says.js';

/** A claim as it is written: of which hull, and who reported it. */
export interface ToWrite extends Omit<FileClaim, 'dealer'> {
  readonly hullId: string;
  readonly dealerId: string | null;
}

/** Fields of a claim whose texts lie apart. */
export const TEXTS_OF_CLAIM = ['symptoms', 'spots.*.note'];

export interface FiledClaim {
  readonly mark: string;
  readonly defects: readonly string[];
  readonly photosAsked: readonly string[];
  readonly says: readonly string[];
}

/** Writes a claim, and a defect for each of its spots. */
export const writeClaim = async (fact: Fact, claim: ToWrite): Promise<FiledClaim> => {
  const parts = await partsOfHull(fact.tx, claim.hullId);
  await assertBegun(fact.tx, claim);
  const number = await nextClaim(fact, claim.hullId);
  const says = surveySays(claim, await skinOf(fact, claim.hullId));
  const claimId = await fact.insert(ClaimEntity, {
    ...{ hullId: claim.hullId, number, kind: claim.kind, reference: claim.reference ?? null, dealerId: claim.dealerId },
    ...{
      reportedOn: claim.reportedOn,
      noticedOn: claim.noticedOn ?? null,
      symptoms: await keepText(fact, claim.symptoms),
    },
    ...{ grade: claim.grade ?? null, looks: claim.looks ?? null, hoursAshore: claim.hoursAshore ?? null },
    ...{ moisture: claim.moisture ?? null, says: [...says], foundBy: claim.foundBy },
  });
  const defects: string[] = [];
  for (const [i, spot] of claim.spots.entries()) {
    const part = partOfHull(parts, spot.part, `/spots/${i}/part`);
    const told = { ...spot, kind: claim.kind, grade: claim.grade };
    const written = await writeDefect(fact, part.id, told, `/spots/${i}`, claimId);
    defects.push(`D${written.number} of ${part.number}`);
  }
  return { mark: `C${number}`, defects, photosAsked: photosAsked([]), says };
};

const skinOf = async (fact: Fact, hullId: string): Promise<Skin | null> => {
  const [row] = await fact.tx.query<{ skin: Skin | null }[]>(
    `select m.skins -> 'hull molding' as skin from fact.hull h join fact.model m on m.id = h.model_id where h.id = $1`,
    [hullId],
  );
  return row?.skin ?? null;
};

/** Claims of a hull are counted under a lock of it. */
const nextClaim = async (fact: Fact, hullId: string): Promise<number> => {
  await fact.tx.query('select pg_advisory_xact_lock(hashtextextended($1, 5))', [`claim/${hullId}`]);
  const [row] = await fact.tx.query<{ next: number }[]>(
    'select coalesce(max(c.number), 0) + 1 as next from fact.claim c where c.hull_id = $1',
    [hullId],
  );
  return row?.next ?? 1;
};

/** @throws InvalidRequest for a day before the hull was begun, by more than zones can differ */
const assertBegun = async (tx: EntityManager, claim: ToWrite): Promise<void> => {
  const first = await firstDayOf(tx, 'hull', claim.hullId);
  const early = (['reportedOn', 'noticedOn'] as const).filter((name) => (claim[name] ?? first) < first);
  if (early.length > 0)
    throw new InvalidRequest(
      early.map((name) => ({
        pointer: `/${name}`,
        detail: 'is before the hull was begun: look at the day, and at the number of the hull',
      })),
    );
};

/**
 * Holds days to what can be: nothing is reported after the day on which it is entered, whatever the zone of the plant.
 *
 * @throws InvalidRequest
 */
export const assertDays = ({ reportedOn, happenedAt }: { reportedOn: string; happenedAt: string }): void => {
  const latest = new Date(Date.parse(happenedAt) + 14 * 3_600_000).toISOString().slice(0, 10);
  if (reportedOn > latest)
    throw new InvalidRequest([{ pointer: '/reportedOn', detail: 'is after the day on which this happened' }]);
};
