import { commitment } from '@hull-record/evidence';
import type { Fact } from '../facts/fact.js';
import { newSecret } from '../ids.js';
import { COMMITMENT } from './free-texts.js';
import { FreeTextEntity } from './free-text.entity.js';

/**
 * Keeps a text apart from the record, under a salt of its own; a text that is not given is not kept.
 *
 * @returns what stands in the fact in its place
 */
export async function keepText(fact: Fact, value: string): Promise<string>;
export async function keepText(fact: Fact, value: string | undefined): Promise<string | null>;
export async function keepText(fact: Fact, value: string | undefined): Promise<string | null> {
  if (value === undefined) return null;
  const salt = newSecret();
  const kept = `${COMMITMENT}${commitment(salt, value)}`;
  await fact.tx.insert(FreeTextEntity, { commitment: kept, value, salt, entryId: fact.id });
  return kept;
}
