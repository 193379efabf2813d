import type { EntityManager } from 'typeorm';
import type { PlantRules } from '@hull-record/contracts';
import { standing } from '../facts/standing.js';

/** What a plant judges by until it says otherwise. */
export const UNTIL_SAID: PlantRules = { marginRule: '3 C', shopWindow: null, barcolFraction: 1 };

/** The rules of a plant as they were at an instant. */
export const plantRulesAt = async (tx: EntityManager, plantId: string, at: Date | string): Promise<PlantRules> => {
  const [found] = await tx.query<PlantRules[]>(
    `select r.margin_rule as "marginRule", r.shop_window as "shopWindow", r.barcol_fraction as "barcolFraction"
     from fact.plant_rules r where r.plant_id = $1 and r.happened_at <= $2 and ${standing('r')}
     order by r.happened_at desc, r.recorded_at desc, r.id limit 1`,
    [plantId, at],
  );
  return found ?? UNTIL_SAID;
};
