import type { EntityManager } from 'typeorm';
import { LotCycle } from '@hull-record/genealogy';
import { standing } from '../facts/standing.js';
import { Conflict } from '../refusals.js';
import { inputsFirstOf } from './inputs-first-of.js';

const CODES = `
  select l.code from unnest($1::uuid[]) with ordinality way(id, n)
  join fact.lot l on l.root = way.id and ${standing('l')} order by way.n`;

/**
 * Sees that no lot is made of itself after a correction: neither by an input that was named, nor by a bucket that was
 * drawn from a tank or gun which, as it turns out, that bucket went into.
 *
 * @param lots those the correction touches, and all that is made of them: a circle can only be among these
 * @throws Conflict `lot-made-of-itself`
 */
export const assertNoCircle = async (tx: EntityManager, lots: readonly string[]): Promise<void> => {
  if (lots.length === 0) return;
  try {
    await inputsFirstOf(tx, lots);
  } catch (error) {
    if (!(error instanceof LotCycle)) throw error;
    const codes = await tx.query<{ code: string }[]>(CODES, [error.path]);
    const way = codes.map(({ code }) => code).join(', made of ');
    throw new Conflict(
      'lot-made-of-itself',
      `A lot would be made of itself: ${way}. Look at when each was drawn, and from what, and correct that first.`,
    );
  }
};
