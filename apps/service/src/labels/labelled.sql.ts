import type { Labelled } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { expiryAt } from '../platform/store/holds.sql.js';

/** What a label is about, as the database gives it; which fields there are depends on what it is on. */
export interface LabelledRow {
  /** Of the codes asked for, counted from 1. */
  readonly place: number;
  readonly plant: string;
  /** The code as it was recorded; of a hull the builder's number, whichever number was asked for. */
  readonly code: string;
  /** Container, part or equipment: of which kind. */
  readonly kind?: string;
  /** Of a container. */
  readonly lot?: string;
  /** Of a lot, or of the lot in a container. */
  readonly origin?: 'received' | 'mixed' | 'tank' | 'cut' | 'unidentified';
  readonly material?: string | null;
  readonly role?: string | null;
  readonly supplierLot?: string | null;
  /** Last day of use, YYYY-MM-DD. */
  readonly expiresOn?: string | null;
  /** What unidentified material looked like. */
  readonly looks?: string | null;
  /** Of a bucket or kit: materials that went into it; of made lots their codes. */
  readonly madeOf?: readonly string[];
  readonly model?: string;
  readonly modelName?: string;
  readonly description?: string;
  readonly roles?: readonly string[];
  /** When the newest fact was recorded of those that the label prints. */
  readonly newest: Date;
}

const PLANT = (x: string): string => `(select home.code from fact.plant home where home.id = ${x}.plant_id) as plant`;

const MATERIAL_OF = (lot: string, as: string): string => `
  left join fact.tank ${as}t on ${as}t.id = ${lot}.tank_id
  left join fact.material ${as} on ${as}.root = coalesce(${lot}.material_id, ${as}t.material_id) and ${standing(as)}`;

const INPUTS = `
  fact.lot_input i join fact.lot x on x.root = i.input_id and ${standing('x')} ${MATERIAL_OF('x', 'im')}
  where i.lot_id = l.root and ${standing('i')}`;

const LOT_WORDS = `
  l.origin, m.name as material, coalesce(m.role, l.role) as role, l.supplier_lot as "supplierLot", l.looks,
  ${expiryAt('l', 'now()')}::text as "expiresOn",
  array(select distinct coalesce(im.name, x.code) from ${INPUTS} order by 1) as "madeOf"`;

/** greatest() passes nulls over. */
const LOT_NEWEST = `
  l.recorded_at, m.recorded_at,
  (select max(r.recorded_at) from fact.lot_retest r where r.lot_id = l.root and ${standing('r')}),
  (select max(greatest(i.recorded_at, x.recorded_at, im.recorded_at)) from ${INPUTS})`;

const ASKED = 'unnest($1::text[]) with ordinality asked(code, place)';

/** SQL of what is labelled, by kind. `$1`: the codes, of hulls their ids. Of several rows for a place the first counts. */
export const LABELLED_ROWS: Readonly<Record<Labelled, string>> = {
  lot: `
    select asked.place::int, ${PLANT('l')}, l.code, ${LOT_WORDS}, greatest(${LOT_NEWEST}) as newest
    from ${ASKED} join fact.lot l on l.code = asked.code and ${standing('l')} ${MATERIAL_OF('l', 'm')}
    order by asked.place, l.recorded_at, l.id`,
  container: `
    select asked.place::int, ${PLANT('c')}, c.label as code, c.kind, l.code as lot, ${LOT_WORDS},
      greatest(c.recorded_at, ${LOT_NEWEST}) as newest
    from ${ASKED} join fact.container c on c.label = asked.code and ${standing('c')}
    join fact.lot l on l.root = c.lot_id and ${standing('l')} ${MATERIAL_OF('l', 'm')}
    order by asked.place, c.recorded_at, c.id`,
  part: `
    select asked.place::int, ${PLANT('p')}, p.number as code, p.kind, m.code as model, m.name as "modelName",
      greatest(p.recorded_at, m.recorded_at) as newest
    from ${ASKED} join fact.part p on p.number = asked.code and ${standing('p')} join fact.model m on m.id = p.model_id
    order by asked.place, p.recorded_at, p.id`,
  hull: `
    select asked.place::int, ${PLANT('h')}, n.as_printed as code, m.code as model, m.name as "modelName",
      greatest(h.recorded_at, n.recorded_at, m.recorded_at) as newest
    from ${ASKED} join fact.hull h on h.id::text = asked.code and ${standing('h')}
    join fact.hull_number n on n.hull_id = h.id and n.kind = 'hull number' join fact.model m on m.id = h.model_id
    order by asked.place, n.recorded_at, n.id`,
  equipment: `
    select asked.place::int, ${PLANT('e')}, e.code, e.kind, e.description, e.recorded_at as newest
    from ${ASKED} join fact.equipment e on e.code = asked.code and ${standing('e')}
    order by asked.place, e.recorded_at, e.id`,
  badge: `
    select asked.place::int, ${PLANT('w')}, w.badge as code,
      array(select distinct r.role from fact.person_role r where r.person_id = w.root and ${standing('r')} order by 1) as roles,
      greatest(w.recorded_at, (select max(r.recorded_at) from fact.person_role r where r.person_id = w.root and ${standing('r')}))
        as newest
    from ${ASKED} join fact.person w on w.badge = asked.code and ${standing('w')}
    order by asked.place, w.recorded_at, w.id`,
};
