import type pg from 'pg';

/** How large a generated plant is; 1 is 200,000 hulls, 2 million lots made and 12 million uses. */
export interface PlantSize {
  readonly hulls: number;
  readonly claims: number;
  /** Received lots of each of seven roles; each is in ten kinds of layer, which makes ten candidates of it. */
  readonly lotsPerRole: number;
}

/**
 * Fills a migrated database with an invented plant of twenty years for the attribution, by sets and not through the use
 * cases: at this size one by one would take weeks. Facts, and what the service derives of them: a rebuild would take hours.
 *
 * Per hull ten layers, each with a bucket mixed for it (from the tank of resin and a lot of catalyst) and five lots of
 * glass, core, putty, pigment and release. Each delivery of resin goes into the tank over a heel of a twentieth.
 */
export const fillForCases = async (owner: pg.Client, size: PlantSize, say: (what: string) => void): Promise<void> => {
  await owner.query("set session_replication_role = 'replica'");
  await owner.query("set work_mem = '256MB'");
  for (const [what, statement] of statements(size)) {
    await owner.query(statement);
    say(what);
  }
  await owner.query("set session_replication_role = 'origin'");
  await owner.query('vacuum analyze');
};

const DIRECT = ['glass', 'core', 'putty', 'pigment', 'release'] as const;
const ROLES = ['resin', 'catalyst', ...DIRECT];
const HEAD = 'id, root, plant_id, entry_id, happened_at, recorded_at';
const PLANT = "md5('plant')::uuid";
const ENTRY = "md5('entry')::uuid";
const BEGIN = "timestamp '2020-01-01'";
const HOURS = 20 * 365 * 24;
const AMOUNT = "1, 'kg', 'metered'";
const id = (kind: string, n: string): string => `md5('${kind}' || ${n})::uuid`;
const head = (kind: string, n: string, hours: string): string =>
  `${id(kind, n)}, ${id(kind, n)}, ${PLANT}, ${ENTRY}, ${BEGIN} + (${hours}) * interval '1 hour', now()`;

const statements = (size: PlantSize): readonly (readonly [string, string])[] => [
  ...stock(size),
  ...boats(size),
  ...making(size),
  ...derived(size),
];

const stock = ({ hulls, lotsPerRole }: PlantSize): [string, string][] => [
  ['plant', `insert into fact.plant values (${PLANT}, 'BENCH', 'UTC')`],
  [
    'journal',
    `insert into fact.journal (id, plant_id, format, kind, person_id, device_id, identity, happened_at, recorded_at, covers, entry)
     values (${ENTRY}, ${PLANT}, 1, 'bench', ${ENTRY}, ${ENTRY}, 'stated', now(), now(), '{}', '{}')`,
  ],
  [
    'materials',
    `insert into fact.material (${HEAD}, code, name, role, maker_data)
     select ${head('material', 'role', '0')}, role, role, role, '{}' from unnest(array['${ROLES.join("','")}']) role`,
  ],
  [
    'tank',
    `insert into fact.tank (${HEAD}, code, material_id, capacity_kg) select ${head('tank', "'1'", '0')}, 'T1', ${id('material', "'resin'")}, 5000`,
  ],
  [
    'received lots',
    `insert into fact.lot (${HEAD}, code, origin, material_id, supplier, supplier_lot, certificate, quantity, unit, basis, kg)
     select ${head('lot', 'role || g', `g * ${HOURS / lotsPerRole}`)}, role || '-' || g, 'received', ${id('material', 'role')}, 'S', 'S' || g, '{}', ${AMOUNT}, 4000
     from unnest(array['${ROLES.join("','")}']) role, generate_series(1, ${lotsPerRole}) g`,
  ],
  [
    'fills of the tank',
    `insert into fact.lot (${HEAD}, code, origin, certificate, tank_id, fill_number, quantity, unit, basis, kg)
     select ${head('fill', 'g', `g * ${HOURS / lotsPerRole}`)}, 'T1-' || g, 'tank', '{}', ${id('tank', "'1'")}, g, ${AMOUNT}, 5000
     from generate_series(1, ${lotsPerRole}) g`,
  ],
  [
    'buckets',
    `insert into fact.lot (${HEAD}, code, origin, certificate, quantity, unit, basis, kg)
     select ${head('bucket', "g || '/' || y", `g * ${HOURS / hulls}`)}, 'B' || g || '-' || y, 'mixed', '{}', ${AMOUNT}, 20.4
     from generate_series(1, ${hulls}) g, generate_series(1, 10) y`,
  ],
  [
    'inputs of buckets and fills',
    `insert into fact.lot_input (${HEAD}, lot_id, input_id, quantity, unit, basis, kg)
     select ${head('from tank', "g || '/' || y", `g * ${HOURS / hulls}`)}, ${id('bucket', "g || '/' || y")}, ${id('fill', lotAt('g', { hulls, lotsPerRole }))}, ${AMOUNT}, 20
     from generate_series(1, ${hulls}) g, generate_series(1, 10) y
     union all select ${head('catalysed', "g || '/' || y", `g * ${HOURS / hulls}`)}, ${id('bucket', "g || '/' || y")}, ${id('lot', `('catalyst' || ${lotAt('g', { hulls, lotsPerRole })})`)}, ${AMOUNT}, 0.4
     from generate_series(1, ${hulls}) g, generate_series(1, 10) y
     union all select ${head('delivered', 'g', `g * ${HOURS / lotsPerRole}`)}, ${id('fill', 'g')}, ${id('lot', "('resin' || g)")}, ${AMOUNT}, 4750 from generate_series(1, ${lotsPerRole}) g
     union all select ${head('heel', 'g', `g * ${HOURS / lotsPerRole}`)}, ${id('fill', 'g')}, ${id('fill', '(g - 1)')}, ${AMOUNT}, 250 from generate_series(2, ${lotsPerRole}) g`,
  ],
];

/** SQL: the lot that is in use when a hull is made, its role's lots each for a run of hulls; `later` shifts its change. */
const lotAt = (hull: string, { hulls, lotsPerRole }: Pick<PlantSize, 'hulls' | 'lotsPerRole'>, later = '0'): string =>
  `least(${lotsPerRole}, greatest(1, ((${hull} + ${later}) * ${lotsPerRole}::bigint) / ${hulls} + 1))`;

const boats = ({ hulls, claims }: PlantSize): [string, string][] => [
  [
    'models',
    `insert into fact.model (${HEAD}, code, name, skins, required_parts) select ${head('model', 'g', '0')}, 'M' || g, 'M' || g, '{}', '{}' from generate_series(0, 1) g`,
  ],
  [
    'molds',
    `insert into fact.mold (${HEAD}, code, model_id, part_kind) select ${head('mold', 'g', '0')}, 'MO-' || g, ${id('model', '(g % 2)')}, 'hull molding' from generate_series(0, 19) g`,
  ],
  [
    'scheduled layers',
    `insert into fact.schedule_layer (${HEAD}, schedule_id, position, code, name, zone, plies, materials, readings, predecessors)
     select ${head('scheduled', 'y', '0')}, ${id('schedule', "'1'")}, y, 'L' || y, 'Layer ' || y, 'whole', '[]', '[]', '[]', '{}' from generate_series(1, 10) y`,
  ],
  [
    'hulls',
    `insert into fact.hull (${HEAD}, model_id) select ${head('hull', 'g', `g * ${HOURS / hulls}`)}, ${id('model', '(g % 2)')} from generate_series(1, ${hulls}) g`,
  ],
  [
    'hull numbers',
    `insert into fact.hull_number (${HEAD}, hull_id, kind, normalised, as_printed)
     select ${head('number', 'g', `g * ${HOURS / hulls}`)}, ${id('hull', 'g')}, 'hull number', 'B' || lpad(g::text, 7, '0'), 'B' || lpad(g::text, 7, '0') from generate_series(1, ${hulls}) g`,
  ],
  [
    'life facts',
    `insert into fact.life_fact (${HEAD}, hull_id, what) select ${head('left', 'g', `g * ${HOURS / hulls} + 1000 + g % 700`)}, ${id('hull', 'g')}, 'left the place of manufacture' from generate_series(1, ${hulls}) g`,
  ],
  [
    'claims',
    `insert into fact.claim (${HEAD}, hull_id, number, kind, reported_on, symptoms, says, found_by)
     select ${head('claim', 'g', '0')}, ${id('hull', `(1 + (g * 7919::bigint) % (${hulls} - 1))`)}, 1, 'blister',
       (${BEGIN} + (((g * 7919::bigint) % (${hulls} - 1)) * ${HOURS / hulls} + 2000 + (g * 104729::bigint) % 50000) * interval '1 hour')::date, 'invented', '{}', 'owner or dealer'
     from generate_series(1, ${claims}) g`,
  ],
];

const making = (size: PlantSize): [string, string][] => [
  [
    'parts',
    `insert into fact.part (${HEAD}, number, kind, model_id, schedule_id, mold_id)
     select ${head('part', 'g', `g * ${HOURS / size.hulls}`)}, 'P' || g, 'hull molding', ${id('model', '(g % 2)')}, ${id('schedule', "'1'")}, ${id('mold', '(g % 20)')} from generate_series(1, ${size.hulls}) g`,
  ],
  [
    'joints',
    `insert into fact.joint (${HEAD}, hull_id, part_id, turn, makers) select ${head('joint', 'g', `g * ${HOURS / size.hulls}`)}, ${id('hull', 'g')}, ${id('part', 'g')}, 1, array[${ENTRY}] from generate_series(1, ${size.hulls}) g`,
  ],
  [
    'layers',
    `insert into fact.layer_record (${HEAD}, part_id, schedule_layer_id, turn, started_at, ended_at, makers)
     select ${head('layer', "g || '/' || y", `g * ${HOURS / size.hulls} + y`)}, ${id('part', 'g')}, ${id('scheduled', 'y')}, 1, now(), now(), array[${ENTRY}]
     from generate_series(1, ${size.hulls}) g, generate_series(1, 10) y`,
  ],
  ...[
    ['bucket', id('bucket', "g || '/' || y"), 20.4] as const,
    ...DIRECT.map((role, i) => [role, id('lot', `('${role}' || ${lotAt('g', size, laterOf(i, size))})`), 6] as const),
  ].map(([kind, lot, kg]): [string, string] => [
    `uses of ${kind}`,
    `insert into fact.used (${HEAD}, lot_id, into_kind, into_id, quantity, unit, basis, kg)
     select ${head(`use ${kind}`, "g || '/' || y", `g * ${HOURS / size.hulls} + y`)}, ${lot}, 'layer', ${id('layer', "g || '/' || y")}, ${AMOUNT}, ${String(kg)}
     from generate_series(1, ${size.hulls}) g, generate_series(1, 10) y`,
  ]),
];

/** Lots of each role change at other hulls, and those of each layer a little apart: so that few are inseparable. */
const laterOf = (role: number, { hulls, lotsPerRole }: PlantSize): string => {
  const run = hulls / lotsPerRole;
  return `${Math.round((run * (role + 1)) / 7)} + (y * ${Math.max(1, Math.round(run / 40))})`;
};

/** Compositions of fills, and what is in each layer: as `rebuildDerived` works it out, down to the floor of 1e-9. */
const derived = (size: PlantSize): [string, string][] => {
  const heel = `power(0.05, f.g - d.g) * case when d.g = 1 then 1 else 0.95 end`;
  const at = `${BEGIN} + (g * ${HOURS / size.hulls} + y) * interval '1 hour'`;
  const into = `insert into derived.place_source (place_id, part_id, into_kind, role, source_id, kg, basis, first_at, last_at)`;
  const place = `${id('layer', "g || '/' || y")}, ${id('part', 'g')}, 'layer'`;
  return [
    [
      'composition of fills',
      `insert into derived.lot_composition (lot_id, version, source_id, role, fraction, basis)
       select ${id('fill', 'f.g')}, 1, ${id('lot', "('resin' || d.g)")}, 'resin', ${heel}, 'metered'
       from generate_series(1, ${size.lotsPerRole}) f(g), generate_series(1, ${size.lotsPerRole}) d(g) where d.g between f.g - 6 and f.g`,
    ],
    [
      'composed fills',
      `insert into derived.composed_lot select ${id('fill', 'g')}, 1, ${ENTRY} from generate_series(1, ${size.lotsPerRole}) g`,
    ],
    [
      'resin in layers',
      `${into} select ${place}, 'resin', c.source_id, 20 * c.fraction, 'metered', ${at}, ${at}
       from generate_series(1, ${size.hulls}) g join derived.lot_composition c on c.lot_id = ${id('fill', lotAt('g', size))}, generate_series(1, 10) y`,
    ],
    ...(['catalyst', ...DIRECT] as const).map((role, i): [string, string] => [
      `${role} in layers`,
      `${into} select ${place}, '${role}', ${id('lot', `('${role}' || ${lotAt('g', size, i === 0 ? '0' : laterOf(i - 1, size))})`)}, ${i === 0 ? 0.4 : 6}, 'metered', ${at}, ${at}
       from generate_series(1, ${size.hulls}) g, generate_series(1, 10) y`,
    ]),
    [
      'totals of layers',
      `insert into derived.place_role (place_id, part_id, role, kg)
       select ${id('layer', "g || '/' || y")}, ${id('part', 'g')}, role, case role when 'resin' then 20 when 'catalyst' then 0.4 else 6 end
       from generate_series(1, ${size.hulls}) g, generate_series(1, 10) y, unnest(array['${ROLES.join("','")}']) role`,
    ],
  ];
};
