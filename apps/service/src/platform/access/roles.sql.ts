import { standing } from '../facts/standing.js';

/** SQL: the roles that a person had at a time, as an array. */
export const rolesAt = (person: string, at: string): string => `array(
  select distinct pr.role from fact.person_role pr
  where pr.person_id = ${person} and pr.happened_at <= ${at} and ${standing('pr')}
    and not exists (select from fact.role_end re where re.person_role_id = pr.root and re.happened_at <= ${at} and ${standing('re')})
  order by 1)`;

/** SQL: the dealer for whom a person looks at a time; null when for none. */
export const dealerAt = (person: string, at: string): string => `(
  select pr.dealer_id from fact.person_role pr
  where pr.person_id = ${person} and pr.role = 'dealer' and pr.happened_at <= ${at} and ${standing('pr')}
    and not exists (select from fact.role_end re where re.person_role_id = pr.root and re.happened_at <= ${at} and ${standing('re')})
  order by pr.happened_at desc, pr.id limit 1)`;
