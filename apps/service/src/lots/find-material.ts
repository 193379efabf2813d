import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { NotThere } from '../platform/refusals.js';

/** A material as those who receive a lot of it need to know it. */
export interface FoundMaterial {
  readonly id: string;
  readonly code: string;
  /** Last day of use that the shelf life gives, when it has one and the lot has a day on which it was made. */
  readonly expiresOn: string | null;
  readonly densityKgPerL?: number;
  readonly arealMassKgPerM2?: number;
  readonly pieceMassKg?: number;
}

interface Row {
  readonly root: string;
  readonly density_kg_per_l: number | null;
  readonly areal_mass_kg_per_m2: number | null;
  readonly piece_mass_kg: number | null;
  readonly expires_on: string | null;
}

/**
 * Finds a material by its code.
 *
 * @throws NotThere
 */
export const findMaterial = async (
  fact: Fact,
  code: string,
  madeOn: string | null,
  pointer: string,
): Promise<FoundMaterial> => {
  const [row] = await fact.tx.query<Row[]>(
    `select m.root, m.density_kg_per_l, m.areal_mass_kg_per_m2, m.piece_mass_kg,
       ($3::date + m.shelf_life_days)::text as expires_on
     from fact.material m where m.plant_id = $1 and m.code = $2 and ${standing('m')}`,
    [fact.author.plantId, code, madeOn],
  );
  if (!row) throw new NotThere('material', code, pointer);
  return {
    id: row.root,
    code,
    expiresOn: row.expires_on,
    ...(row.density_kg_per_l === null ? {} : { densityKgPerL: row.density_kg_per_l }),
    ...(row.areal_mass_kg_per_m2 === null ? {} : { arealMassKgPerM2: row.areal_mass_kg_per_m2 }),
    ...(row.piece_mass_kg === null ? {} : { pieceMassKg: row.piece_mass_kg }),
  };
};
