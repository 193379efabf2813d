import type { TouchedSpots } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';

/** How much may be touched up before it is a repair. */
export interface Limits {
  readonly spotsInAZone: number;
  readonly spotsOnAPart: number;
  readonly largestMm: number;
  readonly source: string;
}

/** Until a plant sets its own. */
export const DEFAULT_LIMITS: Limits = {
  spotsInAZone: 10,
  spotsOnAPart: 40,
  largestMm: 20,
  source: 'from memory, common practice: set your own',
};

/** The limits that held at the time of a fact. */
export const limitsThen = async (fact: Fact): Promise<Limits> => {
  const [own] = await fact.tx.query<Limits[]>(
    `select l.spots_in_a_zone as "spotsInAZone", l.spots_on_a_part as "spotsOnAPart", l.largest_mm as "largestMm", l.source
     from fact.touch_up_limit l where l.plant_id = $1 and l.happened_at <= $2 and ${standing('l')}
     order by l.happened_at desc, l.recorded_at desc, l.id limit 1`,
    [fact.author.plantId, fact.happenedAt],
  );
  return own ?? DEFAULT_LIMITS;
};

/**
 * What of a touch-up is more than a touch-up, each in words.
 *
 * @param before spots touched up on the part earlier
 */
export const overLimits = (spots: readonly TouchedSpots[], before: number, limits: Limits): readonly string[] => {
  const zones = new Map<string, number>();
  for (const { zone, count } of spots) zones.set(zone, (zones.get(zone) ?? 0) + count);
  const all = [...zones.values()].reduce((sum, count) => sum + count, before);
  const by = `(limits: ${limits.source})`;
  return [
    ...[...zones].flatMap(([zone, count]) =>
      count > limits.spotsInAZone
        ? [`${count} spots in zone ${zone} are over ${limits.spotsInAZone} ${by}: it is a repair.`]
        : [],
    ),
    ...spots.flatMap(({ zone, kind, largestMm = 0 }) =>
      largestMm > limits.largestMm
        ? [`A ${kind} of ${largestMm} mm in zone ${zone} is over ${limits.largestMm} mm ${by}: it is a repair.`]
        : [],
    ),
    ...(all > limits.spotsOnAPart
      ? [`${all} spots on the part are over ${limits.spotsOnAPart} ${by}: it is a repair.`]
      : []),
  ];
};
