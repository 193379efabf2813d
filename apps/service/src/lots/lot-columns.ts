import { standing } from '../platform/facts/standing.js';
import { expiryAt, holdKindsOf } from '../platform/store/holds.sql.js';
import { stateOrDefault } from '../platform/lots/find-lots.js';

/** SQL of a lot as lists and pages show it. */
export const LOT_COLUMNS = `
  l.root as id, l.code, l.origin, m.code as material, m.name as "materialName", coalesce(m.role, l.role) as role, l.supplier,
  l.supplier_lot as "supplierLot", l.made_on::text as "madeOn", ${expiryAt('l', 'now()')}::text as "expiresOn",
  json_build_object('quantity', l.quantity::text, 'unit', l.unit, 'basis', l.basis, 'kg', l.kg) as amount,
  ${stateOrDefault('l', 'now()')} as state,
  ${holdKindsOf('l.root', 'now()')} as holds,
  l.happened_at as "happenedAt", l.recorded_at as "recordedAt"`;

export const LOT_TABLES = `
  fact.lot l
  left join fact.tank t on t.id = l.tank_id
  left join fact.material m on m.root = coalesce(l.material_id, t.material_id) and ${standing('m')}`;
