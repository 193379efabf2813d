import type { OwnerDetail } from '@hull-record/contracts';
import { canonicalJson, commitment } from '@hull-record/evidence';
import type { Fact } from '../platform/facts/fact.js';
import { newSecret } from '../platform/ids.js';
import { Conflict } from '../platform/refusals.js';
import { OwnerChangedEntity, OwnerDetailEntity } from './owner.entity.js';

interface Change {
  readonly ownerId: string;
  readonly what: 'corrected' | 'narrowed';
  readonly owner: OwnerDetail;
  readonly erased: readonly string[];
  readonly reason: string;
}

/**
 * Puts personal data in the place of what was kept, under a new salt: the value before is gone with the salt that its
 * commitment was made with.
 *
 * @throws Conflict `erased-already`
 */
export const writeDetail = async (fact: Fact, { owner, ...change }: Change): Promise<void> => {
  const salt = newSecret();
  const { affected } = await fact.tx.update(
    OwnerDetailEntity,
    { ownerId: change.ownerId },
    { detail: { ...owner }, salt },
  );
  if (affected !== 1) throw new Conflict('erased-already', 'What was kept of this owner is erased already.');
  await fact.insert(OwnerChangedEntity, {
    ...change,
    erased: [...change.erased],
    commitment: commitment(salt, canonicalJson(owner)),
  });
};
