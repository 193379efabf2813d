import { CorrectionEntity } from '../platform/facts/correction.entity.js';
import type { Fact } from '../platform/facts/fact.js';
import { insertVersion } from '../platform/facts/new-version.js';
import { standing } from '../platform/facts/standing.js';
import { childId } from '../platform/ids.js';
import { lotInTank } from '../platform/lots/find-lots.js';
import { UsedEntity } from '../platform/used/used.entity.js';
import type { LayerRecordEntity } from './layer-record.entity.js';

type Times = Pick<LayerRecordEntity, 'startedAt' | 'endedAt'>;

const OUTSIDE = `
  select u.id, u.tank_id from fact.used u
  where u.into_id = $1 and (u.happened_at < $2 or u.happened_at > $3) and ${standing('u')} order by u.id`;

/**
 * What was used in a layer was used while the layer was made: when its times are corrected, uses outside them move to
 * its end, and what was drawn from a tank is of the lot that was in it then.
 */
export const moveDraws = async (fact: Fact, old: LayerRecordEntity, { startedAt, endedAt }: Times): Promise<void> => {
  if (startedAt.getTime() === old.startedAt.getTime() && endedAt.getTime() === old.endedAt.getTime()) return;
  const draws = await fact.tx.query<{ id: string; tank_id: string | null }[]>(OUTSIDE, [old.root, startedAt, endedAt]);
  for (const { id, tank_id } of draws) {
    const lot = tank_id === null ? undefined : await lotInTank(fact, tank_id, endedAt, '/set/endedAt');
    const replacement = childId(fact.id, `moves with its layer/${id}`);
    const reason = 'The layer was made at another time.';
    await fact.insert(CorrectionEntity, { corrects: id, correctsTable: 'used', replacement, reason });
    await insertVersion(fact, UsedEntity, id, replacement, { happenedAt: endedAt, lotId: lot?.id });
  }
};
