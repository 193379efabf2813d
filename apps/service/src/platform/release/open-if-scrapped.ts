import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';

interface Done {
  readonly rule: string;
  /** What was done, in words. */
  readonly what: string;
  readonly kind: string;
  readonly id: string;
}

/** Keeps that something was done with a part after it was scrapped. */
export const openIfScrapped = async (fact: Fact, partId: string, { rule, what, kind, id }: Done): Promise<void> => {
  const [scrapped] = await fact.tx.query<{ reason: string }[]>(
    `select s.reason from fact.part_scrapped s where s.part_id = $1 and s.happened_at <= $2 and ${standing('s')}`,
    [partId, fact.happenedAt],
  );
  if (!scrapped) return;
  const detail = `${what} after it was scrapped (${scrapped.reason}).`;
  await fact.open({ rule, detail, aboutKind: kind, aboutId: id, partId });
};
