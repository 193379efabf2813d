import { standing } from '../facts/standing.js';

/** SQL: a hold had not been lifted by an instant. */
export const notLifted = (hold: string, at: string): string => `not exists (
  select from fact.hold_lift lift where lift.hold_id = ${hold}.root and lift.happened_at <= ${at} and ${standing('lift')})`;

/**
 * SQL of kg and time of whatever was drawn from a container by its name, or lost of it.
 *
 * @param c alias of the container
 */
export const drawnByName = (c: string): string =>
  [
    ['used', 'lot_id'],
    ['lot_input', 'input_id'],
    ['lot_loss', 'lot_id'],
  ]
    .map(
      ([table, lot]) => `
        select x.kg, x.happened_at from fact.${table} x
        where x.${lot} = ${c}.lot_id and x.container_id = ${c}.root and ${standing('x')}`,
    )
    .join(' union all ');

/**
 * SQL: some of a container may have gone where its lot alone was named. Not so when what named the container accounts
 * for all of it, as when a drum is sent back whole.
 */
export const perhapsDrawn = (c: string): string =>
  `(${c}.kg - coalesce((select sum(named.kg) from (${drawnByName(c)}) named), 0) > 1e-6)`;

/**
 * SQL: holds in force at an instant on a lot, or on one of its containers, as a list of texts.
 *
 * A hold on another container than the one drawn from is none; when it is not known which was drawn from, it may be it.
 *
 * @param container SQL of the container drawn from; null when none was named
 */
export const holdsOn = (lot: string, container: string, at: string): string => `array(
  select held.kind || case when held.container_id is null then '' else ', container '
      || box.label
      || case when ${container} is null then ', perhaps the one used' else '' end end || ': ' || held.reason
  from fact.hold held
  left join fact.container box on box.root = held.container_id and ${standing('box')}
  where held.lot_id = ${lot} and held.happened_at <= ${at} and ${standing('held')} and ${notLifted('held', at)}
    and (held.container_id is null or held.container_id = ${container} or (${container} is null and ${perhapsDrawn('box')}))
  order by held.happened_at, held.id)`;

/** SQL: kinds of the holds in force at an instant on all of a lot, not on one container of it; each once. */
export const holdKindsOf = (lot: string, at: string): string => `array(
  select distinct held.kind from fact.hold held
  where held.lot_id = ${lot} and held.container_id is null and held.happened_at <= ${at}
    and ${standing('held')} and ${notLifted('held', at)} order by 1)`;

/** SQL: a container was rejected by itself at an instant. */
export const containerRejected = (container: string, at: string): string => `coalesce((
  select said.what = 'rejected' from fact.container_fact said
  where said.container_id = ${container} and said.what in ('rejected', 'accepted') and said.happened_at <= ${at} and ${standing('said')}
  order by said.happened_at desc, said.recorded_at desc, said.id limit 1), false)`;

/**
 * SQL: containers of a lot that were rejected by themselves at an instant, as a list of texts: the one drawn from, or,
 * when none was named, those that it may have been.
 */
export const rejectedOf = (lot: string, container: string, at: string): string => `array(
  select box.label || case when ${container} is null then ', perhaps the one used,' else '' end
  from fact.container box
  where box.lot_id = ${lot} and ${standing('box')} and ${containerRejected('box.root', at)}
    and (box.root = ${container} or (${container} is null and ${perhapsDrawn('box')}))
  order by box.label)`;

/** SQL: the last day of use of a lot as known by an instant: that of its newest retest, or its own. */
export const expiryAt = (l: string, at: string, asOf?: string): string => `coalesce((
  select again.expires_on from fact.lot_retest again where again.lot_id = ${l}.root and again.happened_at <= ${at} and ${standing('again', asOf)}
  order by again.happened_at desc, again.recorded_at desc, again.id limit 1), ${l}.expires_on)`;
