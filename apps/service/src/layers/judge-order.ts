import type { Fact } from '../platform/facts/fact.js';
import { CorrectionEntity } from '../platform/facts/correction.entity.js';
import { openNewlyBrokenAbout } from '../platform/facts/open-newly-broken.js';
import { standing } from '../platform/facts/standing.js';
import { childId } from '../platform/ids.js';
import { brokenOrder } from './broken-layer-rules.js';
import { readScheduleLayer } from '../platform/layers/find-schedule-layer.js';

interface Made {
  readonly root: string;
  readonly schedule_layer_id: string;
  readonly started_at: Date;
}

interface Known {
  readonly id: string;
  readonly rule: string;
  readonly detail: string;
}

interface Touched {
  readonly since: Date;
  readonly but?: string;
}

/** Said about order, and not decided about yet. */
const SAID = `
  select n.id, n.rule, n.detail from fact.nonconformity n
  where n.about_id = $1 and n.rule in ('layer-out-of-order', 'hold-point-passed') and ${standing('n')}
    and not exists (select from fact.disposition o where o.of_id = n.root and ${standing('o')})`;

/**
 * Judges the order of the layers of a part anew, after something about it was entered that happened before: what was
 * entered in another order than it was made is not out of order, and what a late entry brings to light is.
 *
 * @param touched from when on layers may be touched by what was entered, and one that was judged already; all, when it
 *   is left out
 */
export const judgeOrder = async (fact: Fact, partId: string, touched?: Touched): Promise<void> => {
  const made = await fact.tx.query<Made[]>(
    `select r.root, r.schedule_layer_id, r.started_at from fact.layer_record r where r.part_id = $1 and r.started_at >= $2 and r.root is distinct from $3 and ${standing('r')} order by r.started_at, r.root`,
    [partId, touched?.since ?? '-infinity', touched?.but ?? null],
  );
  for (const { root, schedule_layer_id, started_at } of made) {
    const layer = await readScheduleLayer(fact.tx, schedule_layer_id);
    const broken = await brokenOrder(fact.tx, { partId, layer, startedAt: started_at.toISOString() });
    await openNewlyBrokenAbout(fact, broken, { aboutKind: 'layer', aboutId: root, partId });
    for (const { id, rule, detail } of await fact.tx.query<Known[]>(SAID, [root])) {
      if (broken.some((each) => each.rule === rule && each.detail === detail)) continue;
      const reason = 'What was missing had happened before, and was entered later.';
      const correction = { corrects: id, correctsTable: 'nonconformity', replacement: null, reason };
      await fact.insert(CorrectionEntity, { id: childId(fact.id, `in order/${id}`), ...correction });
    }
  }
};
