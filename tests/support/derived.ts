import type { RunningService } from './service.js';

const KEPT = {
  compositions: `select c.lot_id, c.source_id, c.role, c.fraction, c.basis from derived.composed_lot v
    join derived.lot_composition c on c.lot_id = v.lot_id and c.version = v.version order by 1, 2, 3`,
  sources: `select place_id, part_id, into_kind, role, source_id, kg, basis, first_at, last_at from derived.place_source order by 1, 4, 5`,
  roles: 'select place_id, part_id, role, kg from derived.place_role order by 1, 3',
};

/** Everything derived as it is kept now, in a fixed order, to the last bit. */
export const keptDerived = async (service: RunningService): Promise<Record<string, unknown[]>> => {
  const found: Record<string, unknown[]> = {};
  for (const [name, sql] of Object.entries(KEPT)) found[name] = await service.asOwner(sql);
  return found;
};
