import type { TakeReadings } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { InvalidRequest } from '../platform/refusals.js';

/**
 * The number of each spot. Spots of one kind count on through a layer or repair, also over several calls; one that is
 * read again keeps the number it had. Two calls at once wait for each other.
 *
 * @throws InvalidRequest when a reading that is read again is not one of this kind there
 */
export const numberSpots = async (fact: Fact, ofId: string, request: TakeReadings): Promise<readonly number[]> => {
  await fact.tx.query('select pg_advisory_xact_lock(hashtextextended($1, 4))', [`${ofId}/${request.what}`]);
  const taken = await fact.tx.query<{ root: string; id: string; spot: number }[]>(
    `select g.root, g.id, g.spot from fact.reading g where g.of_id = $1 and g.what = $2 and ${standing('g')}`,
    [ofId, request.what],
  );
  const numberOf = new Map(taken.flatMap(({ root, id, spot }) => [[root, spot] as const, [id, spot] as const]));
  assertKnown(request, numberOf);
  let last = Math.max(0, ...taken.map(({ spot }) => spot));
  return request.spots.map(({ readsAgain }) => numberOf.get(readsAgain?.toLowerCase() ?? '') ?? (last += 1));
};

const assertKnown = ({ spots, what }: TakeReadings, numberOf: ReadonlyMap<string, number>): void => {
  const unknown = spots.flatMap(({ readsAgain }, i) =>
    readsAgain === undefined || numberOf.has(readsAgain.toLowerCase())
      ? []
      : [
          {
            pointer: `/spots/${i}/readsAgain`,
            detail: `There is no reading ${readsAgain} of ${what} here: name one that stands.`,
          },
        ],
  );
  if (unknown.length > 0) throw new InvalidRequest(unknown);
};
