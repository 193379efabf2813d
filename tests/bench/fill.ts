import type pg from 'pg';

/**
 * Fills a migrated database with an invented plant by sets, not through the use cases: facts only, at a size that would
 * take hours to record one by one. Nothing derived is written; the service's own rebuild does that.
 *
 * Per hull: 10 layers of one part, each with a use of the tank lot of its day, a glass lot and a catalyst lot.
 * Tank: one fill a day of 8 hulls, over a heel of 20 %.
 */
export const fillPlant = async (owner: pg.Client, hulls: number): Promise<void> => {
  const fills = Math.ceil(hulls / 8);
  await owner.query("set session_replication_role = 'replica'");
  for (const statement of statements(hulls, fills)) await owner.query(statement);
  await owner.query("set session_replication_role = 'origin'");
  await owner.query('analyze');
};

const id = (kind: string, n: string): string => `md5('${kind}' || ${n})::uuid`;
const PLANT = "md5('plant')::uuid";
const ENTRY = "md5('entry')::uuid";
const head = (kind: string, n: string, at = 'g'): string =>
  `${id(kind, n)}, ${id(kind, n)}, ${PLANT}, ${ENTRY}, timestamp '2020-01-01' + (${at} || ' hours')::interval, now()`;

const LOT =
  'id, root, plant_id, entry_id, happened_at, recorded_at, code, origin, material_id, supplier, supplier_lot, certificate, tank_id, fill_number, quantity, unit, basis, kg';
const AMOUNT = "1, 'kg', 'metered'";

const statements = (hulls: number, fills: number): readonly string[] => [
  `insert into fact.plant values (${PLANT}, 'BENCH', 'UTC')`,
  `insert into fact.journal (id, plant_id, format, kind, person_id, device_id, identity, happened_at, recorded_at, covers, entry)
   values (${ENTRY}, ${PLANT}, 1, 'bench', ${ENTRY}, ${ENTRY}, 'stated', now(), now(), '{}', '{}')`,
  `insert into fact.material (id, root, plant_id, entry_id, happened_at, recorded_at, code, name, role, maker_data)
   select ${head('material', 'role', '0')}, role, role, role, '{}' from unnest(array['resin', 'glass', 'catalyst']) role`,
  `insert into fact.tank (id, root, plant_id, entry_id, happened_at, recorded_at, code, material_id, capacity_kg)
   select ${head('tank', '1', '0')}, 'T1', ${id('material', "'resin'")}, 5000`,
  `insert into fact.lot (${LOT}) select ${head('delivery', 'g', 'g * 24')}, 'R-' || g, 'received', ${id('material', "'resin'")}, 'S', 'S' || g, '{}', null, null, ${AMOUNT}, 4000
   from generate_series(1, ${fills}) g`,
  `insert into fact.lot (${LOT}) select ${head('glass', 'g', 'g * 24')}, 'M-' || g, 'received', ${id('material', "'glass'")}, 'S', 'M' || g, '{}', null, null, ${AMOUNT}, 4000
   from generate_series(1, ${Math.ceil(hulls / 4)}) g`,
  `insert into fact.lot (${LOT}) select ${head('catalyst', 'g', 'g * 240')}, 'C-' || g, 'received', ${id('material', "'catalyst'")}, 'S', 'C' || g, '{}', null, null, ${AMOUNT}, 400
   from generate_series(1, ${Math.ceil(hulls / 80)}) g`,
  `insert into fact.lot (${LOT}) select ${head('fill', 'g', 'g * 24 + 1')}, 'T1-' || g, 'tank', null, null, null, '{}', ${id('tank', '1')}, g, ${AMOUNT}, 5000
   from generate_series(1, ${fills}) g`,
  `insert into fact.lot_input (id, root, plant_id, entry_id, happened_at, recorded_at, lot_id, input_id, quantity, unit, basis, kg)
   select ${head('in', 'g')}, ${id('fill', 'g')}, ${id('delivery', 'g')}, ${AMOUNT}, 4000 from generate_series(1, ${fills}) g
   union all select ${head('heel', 'g')}, ${id('fill', 'g')}, ${id('fill', '(g - 1)')}, ${AMOUNT}, 1000 from generate_series(2, ${fills}) g`,
  `insert into fact.model (id, root, plant_id, entry_id, happened_at, recorded_at, code, name, skins, required_parts) select ${head('model', '1', '0')}, 'B', 'B', '{}', '{}'`,
  `insert into fact.hull (id, root, plant_id, entry_id, happened_at, recorded_at, model_id) select ${head('hull', 'g', 'g * 3 + 3')}, ${id('model', '1')} from generate_series(1, ${hulls}) g`,
  `insert into fact.hull_number (id, root, plant_id, entry_id, happened_at, recorded_at, hull_id, kind, normalised, as_printed)
   select ${head('number', 'g')}, ${id('hull', 'g')}, 'hull number', 'B' || lpad(g::text, 7, '0'), 'B' || lpad(g::text, 7, '0') from generate_series(1, ${hulls}) g`,
  `insert into fact.part (id, root, plant_id, entry_id, happened_at, recorded_at, number, kind, model_id, schedule_id, mold_id)
   select ${head('part', 'g')}, 'P' || g, 'hull molding', ${id('model', '1')}, ${ENTRY}, ${ENTRY} from generate_series(1, ${hulls}) g`,
  `insert into fact.joint (id, root, plant_id, entry_id, happened_at, recorded_at, hull_id, part_id, turn, makers)
   select ${head('joint', 'g')}, ${id('hull', 'g')}, ${id('part', 'g')}, 1, array[${ENTRY}] from generate_series(1, ${hulls}) g`,
  `insert into fact.layer_record (id, root, plant_id, entry_id, happened_at, recorded_at, part_id, schedule_layer_id, turn, started_at, ended_at, makers)
   select ${head('layer', "g || '/' || y", 'g * 3 + 4')}, ${id('part', 'g')}, ${id('scheduled', 'y')}, 1, now(), now(), array[${ENTRY}]
   from generate_series(1, ${hulls}) g, generate_series(1, 10) y`,
  ...[
    ['fill', '(g + 7) / 8', 20],
    ['glass', '(g + 3) / 4', 12],
    ['catalyst', '(g + 79) / 80', 0.4],
  ].map(
    ([
      kind,
      lot,
      kg,
    ]) => `insert into fact.used (id, root, plant_id, entry_id, happened_at, recorded_at, lot_id, into_kind, into_id, quantity, unit, basis, kg)
     select ${head(`use ${String(kind)}`, "g || '/' || y", 'g * 3 + 4')}, ${id(String(kind), `(${String(lot)})`)}, 'layer', ${id('layer', "g || '/' || y")}, ${AMOUNT}, ${String(kg)}
     from generate_series(1, ${hulls}) g, generate_series(1, 10) y`,
  ),
];
