import type { EntityManager } from 'typeorm';
import { NotThere } from '../platform/refusals.js';

/** @throws NotThere the first of these that is no model of the plant */
export const assertModels = async (tx: EntityManager, plantId: string, models: readonly string[]): Promise<void> => {
  const rows = await tx.query<{ code: string }[]>(
    'select m.code from fact.model m where m.plant_id = $1 and m.code = any($2)',
    [plantId, models],
  );
  const missing = models.findIndex((model) => !rows.some(({ code }) => code === model));
  if (missing >= 0) throw new NotThere('model', models[missing] as string, `/models/${missing}`);
};
