import { standing } from '../facts/standing.js';

/** SQL: the word of a shift lead under which a nonconformity was gone on over, as JSON; null when there was none. */
export const goOnOf = (c: string): string => `(
  select json_build_object('by', w.badge, 'reason', went.reason, 'at', went.happened_at)
  from fact.go_on went join fact.person w on w.id = went.led_by
  where ${c}.rule = any(went.rules) and ${standing('went')} and (
    (went.part_id = ${c}.part_id and exists (
      select from fact.layer_record of_layer join fact.schedule_layer y on y.id = of_layer.schedule_layer_id
      where of_layer.root = ${c}.about_id and y.code = went.layer))
    or (${c}.about_kind = 'lot' and exists (select from fact.lot made where made.root = ${c}.about_id and made.code = went.lot_code)))
  order by went.happened_at desc, went.id limit 1)`;
