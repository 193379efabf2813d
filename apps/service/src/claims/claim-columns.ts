import { claimMark, isFirstClaim, isPrompted, lastDecision } from '../platform/claims/claim.sql.js';
import { standing } from '../platform/facts/standing.js';

/** SQL of a claim as lists show it. */
export const CLAIM_COLUMNS = `
  c.root as id, ${claimMark('c')} as mark,
  (select n.as_printed from fact.hull_number n where n.hull_id = c.hull_id and n.kind = 'hull number' limit 1) as hull,
  (select n.as_printed from fact.hull_number n where n.hull_id = c.hull_id and n.kind = 'HIN' order by n.recorded_at desc, n.id limit 1) as hin,
  (select m.code from fact.hull h join fact.model m on m.id = h.model_id where h.id = c.hull_id) as model,
  c.kind, c.reported_on::text as "reportedOn", c.noticed_on::text as "noticedOn",
  (select d.code from fact.dealer d where d.root = c.dealer_id and ${standing('d')}) as dealer,
  c.reference, ${isPrompted('c')} as prompted, ${isFirstClaim('c')} as first, ${lastDecision('c')} as decision`;
