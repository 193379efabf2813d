import { Injectable } from '@nestjs/common';
import type { CorrectedValues } from '@hull-record/contracts';
import { Amendments } from '../platform/facts/amendments.js';
import type { Fact } from '../platform/facts/fact.js';
import { insertVersion, readVersion } from '../platform/facts/new-version.js';
import { assertNotAhead } from '../platform/facts/not-ahead.js';
import { openNewlyBrokenAbout } from '../platform/facts/open-newly-broken.js';
import { standing } from '../platform/facts/standing.js';
import { PLACES_OF_VERSIONS, standingPlaces } from '../platform/places/places.js';
import { brokenLotRules, type BrokenRule } from '../platform/lots/break-of-lot-rules.js';
import { FROM_THE_LOT } from '../platform/lots/drawn-row.js';
import { drawAgain } from '../platform/lots/draw.js';
import { drawFromContainer } from '../platform/lots/draw-from-container.js';
import { findLots, type FoundLot } from '../platform/lots/find-lots.js';
import { forgetUnidentified } from '../platform/lots/forget-unidentified.js';
import type { ResolvedTaken } from '../platform/lots/resolved-taken.js';
import { kilogramsOf } from '../platform/lots/known-amount.js';
import { NotThere } from '../platform/refusals.js';
import { UsedEntity } from '../platform/used/used.entity.js';
import { readScheduleLayer } from '../platform/layers/find-schedule-layer.js';
import { foreignMaterials } from '../platform/layers/foreign-materials.js';

const PLACE = standingPlaces('p.root = $1');

type SetUsed = Extract<CorrectedValues, { kind: 'used' }>;

/** Sets anew what was used: another lot or container, another amount, another layer, joint or repair, another time. */
@Injectable()
export class AmendUsed {
  constructor(amendments: Amendments) {
    amendments.of('used', async (fact, oldId, newId, set) => {
      assertNotAhead(set.happenedAt, '/set/happenedAt');
      const old = await readVersion(fact, UsedEntity, oldId);
      const happenedAt = set.happenedAt === undefined ? old.happenedAt : new Date(set.happenedAt);
      const { lot, ...taken } = await takenAs(fact, set, old, happenedAt);
      const into = set.into === undefined ? {} : await findInto(fact, set.into);
      await insertVersion(fact, UsedEntity, oldId, newId, {
        lotId: lot.id,
        ...taken.drawn,
        ...into,
        ...taken.amount,
        happenedAt,
      });
      await forgetUnidentified(fact, 'used', oldId, 'Corrected.');
      await openBroken(fact, lot, { ...old, ...into });
    });
  }
}

/** What using this lot there and then broke, and was not known to. */
const openBroken = async (fact: Fact, lot: FoundLot, { intoKind, intoId }: Into): Promise<void> => {
  const [place] = await fact.tx.query<{ part_id: string }[]>(PLACE, [intoId]);
  const about = { aboutKind: intoKind, aboutId: intoId, partId: place?.part_id ?? null };
  await openNewlyBrokenAbout(fact, [...brokenLotRules(lot), ...(await foreignIn(fact, lot, intoId))], about);
};

const foreignIn = async (fact: Fact, lot: FoundLot, intoId: string): Promise<readonly BrokenRule[]> => {
  const [layer] = await fact.tx.query<{ schedule_layer_id: string }[]>(
    `select r.schedule_layer_id from fact.layer_record r where r.root = $1 and ${standing('r')}`,
    [intoId],
  );
  if (!layer) return [];
  return foreignMaterials(fact.tx, await readScheduleLayer(fact.tx, layer.schedule_layer_id), [lot.id]);
};

/**
 * The lot or container as set; or, of what was drawn from a tank or gun, what it held or what fed it at the time as set;
 * or the old one.
 */
const takenAs = async (fact: Fact, set: SetUsed, old: UsedEntity, at: Date): Promise<ResolvedTaken> => {
  const { quantity, unit, basis } = old;
  const amount = set.amount ?? ({ quantity, unit, basis } as NonNullable<SetUsed['amount']>);
  if (set.container !== undefined) return drawFromContainer(fact, set.container, amount, at, '/set');
  const again = set.lot === undefined ? await drawAgain(fact, old, { amount, at, pointer: '/set' }) : undefined;
  if (again) return again;
  const containerId = set.lot === undefined ? old.containerId : null;
  const lot = await findLot(fact, set.lot ?? old.lotId, at, containerId);
  return { lot, drawn: { ...FROM_THE_LOT, containerId }, amount: kilogramsOf(amount, lot, '/set/amount') };
};

const findLot = async (fact: Fact, name: string, at: Date, container: string | null): Promise<FoundLot> => {
  const found = (await findLots(fact.tx, fact.author.plantId, [name], at, container)).get(name);
  if (!found) throw new NotThere('lot', name, '/set/lot');
  return found;
};

type Into = Pick<UsedEntity, 'intoKind' | 'intoId'>;

/** Where it was really used, by the id of any version of the layer, joint or repair. */
const findInto = async (fact: Fact, id: string): Promise<Into> => {
  const [version] = await fact.tx.query<{ place_id: string }[]>(PLACES_OF_VERSIONS, [[id]]);
  const [found] = await fact.tx.query<{ place_id: string; into_kind: Into['intoKind'] }[]>(PLACE, [
    version?.place_id ?? id,
  ]);
  if (!found) throw new NotThere('layer, joint or repair', id, '/set/into');
  return { intoKind: found.into_kind, intoId: found.place_id };
};
