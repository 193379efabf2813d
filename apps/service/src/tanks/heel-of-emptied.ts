import type { Fact } from '../platform/facts/fact.js';
import { openNewlyBrokenAbout } from '../platform/facts/open-newly-broken.js';
import { standing } from '../platform/facts/standing.js';

/** Fills of tank `$1` with a heel of the fill before them, although the tank was emptied in between. */
const FOUND = `
  with fills as (
    select l.root, l.happened_at, lag(l.root) over win as before, lag(l.happened_at) over win as filled
    from fact.lot l where l.tank_id = $1 and ${standing('l')} window win as (order by l.happened_at, l.fill_number))
  select f.root from fills f
  join fact.lot_input heel on heel.lot_id = f.root and heel.input_id = f.before and ${standing('heel')}
  where exists (select from fact.tank_emptied e where e.tank_id = $1 and e.happened_at between f.filled and f.happened_at and ${standing('e')})
  order by f.happened_at`;

/** A heel in a tank that was emptied since its last fill: one of the two is not as it was. Kept, and said once. */
export const openHeelsOfEmptied = async (fact: Fact, tank: string, tankId: string): Promise<void> => {
  const detail = `Tank ${tank} was emptied before this fill, and a heel was measured all the same.`;
  for (const { root } of await fact.tx.query<{ root: string }[]>(FOUND, [tankId]))
    await openNewlyBrokenAbout(fact, [{ rule: 'heel-of-emptied-tank', detail }], {
      aboutKind: 'lot',
      aboutId: root,
      partId: null,
    });
};
