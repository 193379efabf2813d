/** SQL: the parts that version `id` of a fact in a table is about. */
const PARTS: Readonly<Record<string, string>> = {
  layer_record: 'select x.part_id from fact.layer_record x where x.id = any($1)',
  repair: 'select x.part_id from fact.repair x where x.id = any($1)',
  touch_up: 'select x.part_id from fact.touch_up x where x.id = any($1)',
  joint: 'select x.part_id from fact.joint x where x.id = any($1)',
  defect: 'select x.part_id from fact.defect x where x.id = any($1)',
  part_schedule: 'select x.part_id from fact.part_schedule x where x.id = any($1)',
  nonconformity: 'select x.part_id from fact.nonconformity x where x.id = any($1)',
  acceptance: `select r.part_id from fact.acceptance x join fact.repair r on r.id = x.repair_id where x.id = any($1)`,
  repair_defect: `select r.part_id from fact.repair_defect x join fact.repair r on r.root = x.repair_id where x.id = any($1)`,
};

/** SQL: the parts of what facts are about, by its root: a place, a part itself, a defect, a reading, a nonconformity. */
const partsOfRoots = (roots: string): string => `
  select p.id as part_id from fact.part p where p.id in (${roots})
  union all select p.part_id from fact.layer_record p where p.root in (${roots})
  union all select p.part_id from fact.joint p where p.root in (${roots})
  union all select p.part_id from fact.repair p where p.root in (${roots})
  union all select p.part_id from fact.defect p where p.root in (${roots})
  union all select p.part_id from fact.nonconformity p where p.root in (${roots})
  union all select r.part_id from fact.reading g join fact.layer_record r on r.root = g.of_id where g.root in (${roots})
  union all select g.of_id from fact.reading g where g.root in (${roots})`;

/** SQL: what readings, dispositions and the places of a reach are about. */
const ROOTS = `
  select x.of_id from fact.reading x where x.id = any($1)
  union all select x.of_id from fact.disposition x where x.id = any($1)
  union all select unnest($2::uuid[])`;

/**
 * SQL: hulls that anything which an entry corrected is about, and whose newest certificate was not withdrawn.
 *
 * `$1` versions that were corrected, or put in the place of one; `$2` places that they reach through composition; `$3`
 * the entry. A part counts for every hull that it was ever joined to: drawing says whether it makes a difference.
 */
export const HULLS_OF_ENTRY = `
  with parts as (${Object.values(PARTS).join(' union all ')} union all ${partsOfRoots(ROOTS)}),
  hulls as (
    select j.hull_id from fact.joint j where j.part_id in (select part_id from parts)
    union select j.hull_id from fact.joint j where j.id = any($1)
    union select f.hull_id from fact.life_fact f where f.id = any($1)
    union select n.hull_id from fact.hull_number n where n.entry_id = $3)
  select distinct on (c.hull_id) c.id, c.hull_id as "hullId", c.content
  from fact.certificate c join hulls h on h.hull_id = c.hull_id
  order by c.hull_id, c.issue desc`;
