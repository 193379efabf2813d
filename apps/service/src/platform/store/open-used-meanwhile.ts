import type { Fact } from '../facts/fact.js';
import { openNewlyBroken } from '../facts/open-newly-broken.js';
import { standing } from '../facts/standing.js';
import { standingPlaces } from '../places/places.js';

/** A lot, or one container of it. */
export interface Held {
  readonly lotId: string;
  readonly containerId: string | null;
}

const ONE_OF = (draw: string): string =>
  `($2::uuid is null or ${draw}.container_id is null or ${draw}.container_id = $2)`;

const USED = `
  select place.into_kind as about_kind, place.place_id as about_id, place.part_id from fact.used u
  join lateral (${standingPlaces('p.root = u.into_id')}) place on true
  where u.lot_id = $1 and ${ONE_OF('u')} and u.happened_at >= $3 and ${standing('u')}
  union
  select 'lot', i.lot_id, null from fact.lot_input i
  where i.input_id = $1 and ${ONE_OF('i')} and i.happened_at >= $3 and ${standing('i')}`;

/**
 * Opens a nonconformity wherever a lot or container was used after it was held or rejected, when that is entered late.
 *
 * What was drawn of the lot without naming a container may have been of it.
 */
export const openUsedMeanwhile = async (fact: Fact, held: Held, rule: string, detail: string): Promise<void> => {
  const found = await fact.tx.query<{ about_kind: string; about_id: string; part_id: string | null }[]>(USED, [
    held.lotId,
    held.containerId,
    fact.happenedAt,
  ]);
  for (const { about_kind, about_id, part_id } of found)
    await openNewlyBroken(fact, [{ rule, detail }], { aboutKind: about_kind, aboutId: about_id, partId: part_id });
};
