/**
 * SQL of the layers, joints and repairs that were ever of the hull. `left_at` is when the record of one was moved to
 * another part, or withdrawn: what was recorded of it later is no business of this hull.
 */
const PLACES = `
  versions as (
    select r.id, r.root from fact.layer_record r where r.part_id = any($3::uuid[]) and r.recorded_at <= $2
    union all select r.id, r.root from fact.repair r where r.part_id = any($3) and r.recorded_at <= $2
    union all select t.id, t.root from fact.touch_up t where t.part_id = any($3) and t.recorded_at <= $2
    union all select j.id, j.root from fact.joint j where j.hull_id = $1 and j.recorded_at <= $2),
  places as (
    select v.root, case when bool_or(c.id is null) then null else max(c.recorded_at) end as left_at
    from versions v left join fact.correction c on c.corrects = v.id and c.recorded_at <= $2 group by v.root)`;

const OF_HULL = ['hull_number', 'life_fact', 'joint'].map(
  (table) =>
    `select x.id, x.root, ${table === 'joint' ? 'x.root' : 'null::uuid'} as place, x.recorded_at, null::timestamptz as left_at
     from fact.${table} x where x.hull_id = $1`,
);

const OF_PARTS = [
  'select x.id, x.root, x.root, x.recorded_at, null from fact.layer_record x where x.part_id = any($3)',
  'select x.id, x.root, x.root, x.recorded_at, null from fact.repair x where x.part_id = any($3)',
  'select x.id, x.root, x.root, x.recorded_at, null from fact.touch_up x where x.part_id = any($3)',
  'select x.id, x.root, null, x.recorded_at, null from fact.reading x where x.of_id = any($3)',
  'select x.id, x.root, null, x.recorded_at, null from fact.part_scrapped x where x.part_id = any($3)',
  'select x.id, x.root, null, x.recorded_at, null from fact.part_schedule x where x.part_id = any($3)',
  `select x.id, x.root, v.root, x.recorded_at, null from fact.touch_up_acceptance x join versions v on v.id = x.touch_up_id`,
  `select x.id, x.root, v.root, x.recorded_at, null from fact.re_inspection x join versions v on v.id = x.repair_id`,
  'select x.id, x.root, null, x.recorded_at, null from fact.defect x where x.part_id = any($3)',
  `select x.id, x.root, null, x.recorded_at, null from fact.photo x
   where x.defect_id in (select d.root from fact.defect d where d.part_id = any($3))`,
  `select x.id, x.root, v.root, x.recorded_at, null from fact.signature x join versions v on v.id = x.layer_record_id`,
  `select x.id, x.root, v.root, x.recorded_at, null from fact.entry_confirmation x
   join fact.unproved_entry ue on ue.id = x.unproved_entry_id
   join fact.signature s on s.entry_id = ue.entry_id join versions v on v.id = s.layer_record_id`,
  ...[
    ['acceptance', 'repair_id'],
    ['touch_up_acceptance', 'touch_up_id'],
  ].map(
    ([table, of]) => `select x.id, x.root, v.root, x.recorded_at, null from fact.entry_confirmation x
   join fact.unproved_entry ue on ue.id = x.unproved_entry_id
   join fact.${table} a on a.entry_id = ue.entry_id join versions v on v.id = a.${of}`,
  ),
  `select x.id, x.root, v.root, x.recorded_at, null from fact.acceptance x join versions v on v.id = x.repair_id`,
  `select x.id, x.root, p.root, x.recorded_at, p.left_at from fact.repair_defect x join places p on p.root = x.repair_id`,
  `select x.id, x.root, p.root, x.recorded_at, p.left_at from fact.repair_photo x join places p on p.root = x.repair_id`,
  `select x.id, x.root, p.root, x.recorded_at, p.left_at from fact.used x join places p on p.root = x.into_id`,
  `select x.id, x.root, p.root, x.recorded_at, p.left_at from fact.reading x join places p on p.root = x.of_id`,
  `select x.id, x.root, p.root, x.recorded_at, p.left_at from fact.verdict x join places p on p.root = x.about_id`,
];

/** SQL of the holds on lots drawn on, and of those that reached the hull when they were placed. */
const HOLDS = `
  holds as (
    select h.root from fact.hold h where h.lot_id = any($4::uuid[]) and h.recorded_at <= $2
    union select r.hold_id from fact.hold_reached r where r.hull_id = $1 or r.part_id = any($3::uuid[]))`;

const HELD = ['hold_scope', 'hold_lift'] as const;

const OTHERS = [
  'select x.id, x.root, null, x.recorded_at, null from fact.hull x where x.id = $1',
  `select x.id, x.root, null, x.recorded_at, null from fact.part x join fact.part p on p.mold_id = x.mold_id
   where p.id = any($3) and x.happened_at <= p.happened_at`,
  `select x.id, x.root, null, x.recorded_at, null from fact.mold_care x join fact.part p on p.mold_id = x.mold_id
   where p.id = any($3) and x.happened_at <= p.happened_at`,
  'select x.id, x.root, null, x.recorded_at, null from fact.lot x where x.root = any($4::uuid[])',
  'select x.id, x.root, null, x.recorded_at, null from fact.lot_input x where x.lot_id = any($4)',
  'select x.id, x.root, null, x.recorded_at, null from fact.lot_state x where x.lot_id = any($4)',
  ...HELD.map(
    (table) =>
      `select x.id, x.root, null, x.recorded_at, null from fact.${table} x where x.hold_id in (select root from holds)`,
  ),
  `select x.id, x.root, null, x.recorded_at, null from fact.hold x where x.root in (select root from holds)`,
  'select x.id, x.root, null, x.recorded_at, null from fact.hold_disposition x where x.hull_id = $1',
  'select x.id, x.root, null, x.recorded_at, null from fact.lot_retest x where x.lot_id = any($4)',
  'select x.id, x.root, null, x.recorded_at, null from fact.verdict x where x.about_id = any($4)',
  `select x.id, x.root, null, x.recorded_at, null from fact.verdict x where x.about_kind = 'defect' and x.part_id = any($3)`,
  `select x.id, x.root, null, x.recorded_at, null from (
     select id, max(at) as last from (
       select g.equipment_id as id, g.happened_at as at from fact.reading g join places p on p.root = g.of_id
       union all select u.gun_id, u.happened_at from fact.used u join places p on p.root = u.into_id) used
     where id is not null group by id) w
   join fact.equipment_check x on x.equipment_id = w.id and x.happened_at <= coalesce(
     (select min(k.happened_at) from fact.equipment_check k where k.equipment_id = w.id and k.what = x.what
       and k.happened_at > w.last), w.last)`,
  `select x.id, x.root, null, x.recorded_at, null from fact.nonconformity x where x.part_id = any($3)
   or (x.part_id is null and ((x.about_kind = 'hull' and x.about_id = $1) or x.about_id = any($4)))`,
];

/**
 * SQL, to stand after `with`: `touched`, every version of every fact of a hull that was recorded by an instant, and
 * `corrections` of these.
 *
 * Parameters: `$1` the hull, `$2` the instant, `$3` its parts, `$4` all lots drawn on.
 */
export const TOUCHED = `
  ${PLACES}, ${HOLDS},
  undecided as (${[...OF_HULL, ...OF_PARTS, ...OTHERS].join(' union all ')}),
  everything as (
    select * from undecided
    union all
    select o.id, o.root, u.place, o.recorded_at, u.left_at from fact.disposition o
    join (select distinct root, place, left_at from undecided) u on u.root = o.of_id
    union all
    select r.id, r.root, u.place, r.recorded_at, u.left_at from fact.text_redacted r
    join (select distinct root, place, left_at from undecided) u on u.root = r.of_root
    union all
    select r.id, r.root, u.place, r.recorded_at, u.left_at from fact.photo_redacted r
    join (select distinct root, place, left_at from undecided) u on u.root = r.photo_id),
  touched as (
    select * from everything x where x.recorded_at <= $2 and (x.left_at is null or x.recorded_at <= x.left_at)),
  corrections as (
    select distinct c.id, t.place from touched t join fact.correction c on c.corrects = t.id
    where c.recorded_at <= $2 and (t.left_at is null or c.recorded_at <= t.left_at))`;

/** Names what is drawn: the hull, its parts and the lots in them. */
export interface Drawn {
  readonly hull: string;
  readonly parts: readonly string[];
  readonly lots: readonly string[];
}

/** The parameters of TOUCHED. */
export const touchedBy = ({ hull, parts, lots }: Drawn, asOf: string): readonly unknown[] => [hull, asOf, parts, lots];
