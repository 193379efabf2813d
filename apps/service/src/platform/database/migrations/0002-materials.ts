import type { MigrationInterface, QueryRunner } from 'typeorm';
import { FACT_COLUMNS } from './0001-journal.js';

/** Materials, lots and what they were made of, tanks, equipment, dealers. */
export class Materials0002 implements MigrationInterface {
  readonly name = 'Materials0002000000000';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(MATERIAL);
    await runner.query(LOT);
    await runner.query(OTHERS);
  }

  /** Forward only: undoing this would delete facts. */
  down(): Promise<void> {
    throw new Error('Facts are never deleted; restore a backup instead.');
  }
}

/** An amount as entered, and in kilograms. Basis runs from strongest to weakest. */
export const AMOUNT_COLUMNS = `
  quantity numeric not null,
  unit text not null,
  basis text not null check (basis in ('weighed', 'metered', 'apportioned', 'as scheduled')),
  kg double precision not null check (kg > 0 and kg < 'infinity')`;

const MATERIAL = `
  create table fact.material (${FACT_COLUMNS},
    code text not null,
    name text not null,
    role text not null constraint material_role_known check (role in ('gel coat', 'resin', 'catalyst', 'promoter',
      'inhibitor', 'pigment', 'glass', 'core', 'board', 'putty', 'bonding paste', 'release')),
    maker text,
    shelf_life_days integer constraint material_shelf_life_positive check (shelf_life_days > 0),
    density_kg_per_l double precision check (density_kg_per_l > 0),
    areal_mass_kg_per_m2 double precision check (areal_mass_kg_per_m2 > 0),
    piece_mass_kg double precision check (piece_mass_kg > 0),
    loss_allowance double precision check (loss_allowance >= 0 and loss_allowance < 1),
    maker_data jsonb not null
  );
  create unique index material_code_once on fact.material (plant_id, code) where root = id;
`;

const LOT = `
  create table fact.tank (${FACT_COLUMNS},
    code text not null,
    material_id uuid not null references fact.material,
    capacity_kg double precision not null check (capacity_kg > 0),
    constraint tank_code_once unique (plant_id, code)
  );
  create table fact.lot (${FACT_COLUMNS},
    code text not null,
    origin text not null constraint lot_origin_known check (origin in ('received', 'mixed', 'tank', 'cut')),
    material_id uuid references fact.material,
    supplier text,
    supplier_lot text,
    made_on date,
    expires_on date,
    certificate jsonb not null,
    tank_id uuid references fact.tank,
    fill_number integer,
    ${AMOUNT_COLUMNS},
    constraint lot_received_names_its_material check (origin <> 'received' or (material_id is not null and supplier_lot is not null)),
    constraint lot_tank_names_its_fill check ((origin = 'tank') = (tank_id is not null) and (tank_id is null) = (fill_number is null))
  );
  create unique index lot_code_once on fact.lot (plant_id, code) where root = id;
  create unique index tank_fill_once on fact.lot (tank_id, fill_number) where root = id;
  create index lot_root on fact.lot (root);
  create index lot_material on fact.lot (material_id);
  create index lot_happened on fact.lot (happened_at, root);
  create index lot_supplier_lot on fact.lot (supplier_lot);
  create table fact.lot_input (${FACT_COLUMNS},
    lot_id uuid not null references fact.lot,
    input_id uuid not null references fact.lot,
    tank_id uuid references fact.tank,
    ${AMOUNT_COLUMNS},
    constraint lot_input_not_itself check (lot_id <> input_id)
  );
  create index lot_input_lot on fact.lot_input (lot_id) include (input_id, kg);
  create index lot_input_tank on fact.lot_input (tank_id, happened_at) where tank_id is not null;
  create index lot_input_input on fact.lot_input (input_id) include (lot_id, kg);
  create table fact.lot_state (${FACT_COLUMNS},
    lot_id uuid not null references fact.lot,
    state text not null constraint lot_state_known check (state in ('quarantined', 'released', 'held', 'rejected')),
    reason text not null
  );
  create index lot_state_lot on fact.lot_state (lot_id, happened_at);
`;

const OTHERS = `
  create table fact.equipment (${FACT_COLUMNS},
    code text not null,
    kind text not null,
    description text not null,
    constraint equipment_code_once unique (plant_id, code)
  );
  create table fact.dealer (${FACT_COLUMNS},
    code text not null,
    name text not null,
    place text not null,
    constraint dealer_code_once unique (plant_id, code)
  );
`;
