import type { EntityManager } from 'typeorm';

/** The plant as papers name it; `time_zone` is the IANA name that their times are printed in. */
export interface PlantRow {
  readonly plant: string;
  readonly time_zone: string;
}

/** The plant that a fact belongs to. */
export const plantOf = async (
  tx: EntityManager,
  table: 'lot' | 'part' | 'equipment' | 'hull',
  id: string,
): Promise<PlantRow> => {
  const [plant] = await tx.query<[PlantRow]>(
    `select p.code as plant, p.time_zone from fact.${table} x join fact.plant p on p.id = x.plant_id where x.id = $1`,
    [id],
  );
  return plant;
};
