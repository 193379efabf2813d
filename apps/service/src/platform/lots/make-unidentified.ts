import type { Unidentified } from '@hull-record/contracts';
import type { Fact } from '../facts/fact.js';
import { childId } from '../ids.js';
import { InvalidRequest } from '../refusals.js';
import type { KnownAmount } from './known-amount.js';
import { findLots, type FoundLot } from './find-lots.js';
import { LotCandidateEntity } from './lot-candidate.entity.js';
import { LotEntity } from './lot.entity.js';

/**
 * Keeps material that nobody can name as a lot of its own, with the lots that it may be of.
 *
 * A search of one of those answers "possibly", and so does a search back. When no lot is named, it may be any received
 * lot of its role that was there then.
 *
 * @param pointer field of the request that says what is known of it
 */
export const makeUnidentified = async (
  fact: Fact,
  known: Unidentified,
  amount: KnownAmount,
  at: Date,
  pointer: string,
): Promise<FoundLot> => {
  const candidates = await findCandidates(fact, known, at, pointer);
  // One entry of several parts makes one for each of them, all from the same field.
  const nth = fact.wrote('lot').length;
  const id = unidentifiedId(fact.id, pointer, nth);
  const code = `U-${id.slice(0, 8)}`;
  await fact.insert(LotEntity, {
    ...{ id, code, origin: 'unidentified', role: known.role, looks: known.looks, foundAt: known.foundAt ?? null },
    ...{ materialId: null, supplier: null, supplierLot: null, madeOn: null, expiresOn: null },
    ...{ certificate: {}, certified: null, tankId: null, fillNumber: null, happenedAt: at },
    ...amount,
  });
  await fact.insertMany(
    LotCandidateEntity,
    candidates.map(({ id: candidateId }) => ({
      id: childId(id, `candidate ${candidateId}`),
      lotId: id,
      candidateId,
    })),
  );
  const lots = await findLots(fact.tx, fact.author.plantId, [id], at);
  return lots.get(id) as FoundLot;
};

const unidentifiedId = (fact: string, pointer: string, nth: number): string =>
  childId(fact, `unidentified${pointer}${nth === 0 ? '' : ` ${nth}`}`);

/**
 * The ids that lots of unidentified material from one field of an entry may have.
 *
 * @param count how many such lots the entry made, of whatever field
 */
export const unidentifiedIds = (fact: string, pointer: string, count: number): readonly string[] =>
  Array.from({ length: count }, (_, nth) => unidentifiedId(fact, pointer, nth));

const findCandidates = async (
  fact: Fact,
  { likely }: Unidentified,
  at: Date,
  pointer: string,
): Promise<readonly FoundLot[]> => {
  const lots = await findLots(fact.tx, fact.author.plantId, likely, at);
  const missing = likely.flatMap((name, i) =>
    lots.has(name) ? [] : [{ pointer: `${pointer}/likely/${i}`, detail: `There is no lot ${name}: check the code.` }],
  );
  if (missing.length > 0) throw new InvalidRequest(missing);
  return [...new Map([...lots.values()].map((lot) => [lot.id, lot])).values()];
};
