import { standing } from '../facts/standing.js';

/** Shares are kept in so many parts of the whole: the floor of compositions. */
export const PARTS_OF_WHOLE = 1e9;

/** SQL: the share that the source `s` is of like material `t` in its place, in whole parts of 1e9. */
export const SHARE = `round(s.kg / t.kg * ${PARTS_OF_WHOLE})::int4`;

/** SQL: the day (UTC, days since 1970) on which the source `s` was first put into its place. */
export const DAY = 'floor(extract(epoch from s.first_at) / 86400)::int4';

/** SQL: like material in the place of `s`, and the name of that place in `s.into_what`: its layer, or else its kind. */
export const ITS_PLACE = `
  join derived.place_role t on t.place_id = s.place_id and t.role = s.role
  left join fact.layer_record r on s.into_kind = 'layer' and r.root = s.place_id and ${standing('r')}
  left join fact.schedule_layer y on y.id = r.schedule_layer_id`;

export const INTO_WHAT = 'coalesce(y.name, s.into_kind)';
