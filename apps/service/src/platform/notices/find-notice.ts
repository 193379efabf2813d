import type { EntityManager } from 'typeorm';
import type { NoticeContents } from '@hull-record/contracts';
import { standing } from '../facts/standing.js';
import { uuidOrNull } from '../lookups/uuid-or-null.js';
import { NotThere } from '../refusals.js';

/** A notice that stands. */
export interface FoundNotice {
  readonly id: string;
  /** Id of this version, which says to which plant it belongs. */
  readonly version: string;
  readonly code: string;
  readonly hold: string;
  readonly contents: NoticeContents;
  readonly happenedAt: string;
}

/**
 * Finds a notice by code or id.
 *
 * @throws NotThere
 */
export const findNotice = async (tx: EntityManager, notice: string): Promise<FoundNotice> => {
  const [found] = await tx.query<(Omit<FoundNotice, 'happenedAt'> & { happenedAt: Date })[]>(
    `select n.root as id, n.id as version, n.code, n.hold_id as hold, n.contents, n.happened_at as "happenedAt" from fact.notice n
     where (n.code = $1 or n.root = ${uuidOrNull('$1::text')}) and ${standing('n')} order by n.recorded_at limit 1`,
    [notice],
  );
  if (!found) throw new NotThere('notice', notice);
  return { ...found, happenedAt: found.happenedAt.toISOString() };
};
