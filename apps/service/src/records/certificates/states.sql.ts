import { standing } from '../../platform/facts/standing.js';

/** SQL: what an issue of a certificate is now. */
export const stateOf = (c: string): string => `case
  when exists (select from fact.certificate_withdrawn w where w.certificate_id = ${c}.id and ${standing('w')}) then 'withdrawn'
  when exists (select from fact.certificate n where n.hull_id = ${c}.hull_id and n.issue > ${c}.issue
    and exists (select from fact.certificate_file nf where nf.certificate_id = n.id)) then 'replaced'
  when exists (select from fact.certificate_file f where f.certificate_id = ${c}.id) then 'current'
  else 'being made' end`;
