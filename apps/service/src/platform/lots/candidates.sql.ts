import { standing } from '../facts/standing.js';

const NAMED = `exists (select from fact.lot_candidate n where n.lot_id = u.root and ${standing('n')})`;

/**
 * SQL of pairs (candidate_id, lot_id): lots that unidentified material may be of.
 *
 * Those named when it was recorded; when none was named, every received lot of its role that had come by then.
 */
export const CANDIDATES = `
  select c.candidate_id, c.lot_id from fact.lot_candidate c
  join fact.lot u on u.root = c.lot_id and ${standing('u')} where ${standing('c')}
  union all
  select x.root, u.root from fact.lot u
  join fact.lot x on x.origin = 'received' and x.plant_id = u.plant_id and x.happened_at <= u.happened_at and ${standing('x')}
  join fact.material m on m.root = x.material_id and m.role = u.role and ${standing('m')}
  where u.origin = 'unidentified' and ${standing('u')} and not ${NAMED}`;
