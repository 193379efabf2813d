import { standing } from '../facts/standing.js';

/** SQL: a hold had not been lifted by an instant. */
export const notLifted = (hold: string, at: string): string => `not exists (
  select from fact.hold_lift lift where lift.hold_id = ${hold}.root and lift.happened_at <= ${at} and ${standing('lift')})`;

/**
 * SQL: holds in force at an instant on a lot, or on one of its containers, as a list of texts.
 *
 * A hold on another container than the one drawn from is none; when it is not known which was drawn from, it may be it.
 *
 * @param container SQL of the container drawn from; null when none was named
 */
export const holdsOn = (lot: string, container: string, at: string): string => `array(
  select held.kind || case when held.container_id is null then '' else ', container '
      || (select box.label from fact.container box where box.id = held.container_id)
      || case when ${container} is null then ', perhaps the one used' else '' end end || ': ' || held.reason
  from fact.hold held
  where held.lot_id = ${lot} and held.happened_at <= ${at} and ${standing('held')} and ${notLifted('held', at)}
    and (held.container_id is null or ${container} is null or held.container_id = ${container})
  order by held.happened_at, held.id)`;

/** SQL: a container was rejected by itself at an instant. */
export const containerRejected = (container: string, at: string): string => `coalesce((
  select said.what = 'rejected' from fact.container_fact said
  where said.container_id = ${container} and said.what in ('rejected', 'accepted') and said.happened_at <= ${at} and ${standing('said')}
  order by said.happened_at desc, said.recorded_at desc, said.id limit 1), false)`;

/** SQL: the last day of use of a lot as known by an instant: that of its newest retest, or its own. */
export const expiryAt = (l: string, at: string): string => `coalesce((
  select again.expires_on from fact.lot_retest again where again.lot_id = ${l}.root and again.happened_at <= ${at} and ${standing('again')}
  order by again.happened_at desc, again.recorded_at desc, again.id limit 1), ${l}.expires_on)`;
