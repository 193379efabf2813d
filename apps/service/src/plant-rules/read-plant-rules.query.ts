import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { PlantRulesView } from '@hull-record/contracts';
import { MARGIN_RULES, NINETY_PERCENT, SHOP_WINDOWS } from '@hull-record/trade';
import { standing } from '../platform/facts/standing.js';
import { UNTIL_SAID } from '../platform/rules/plant-rules.sql.js';

const HISTORY = `
  select r.id, r.margin_rule as "marginRule", r.shop_window as "shopWindow", r.barcol_fraction as "barcolFraction", r.reason,
    r.happened_at as from
  from fact.plant_rules r where ${standing('r')} order by r.happened_at desc, r.recorded_at desc, r.id`;

const SOURCES = [
  ...Object.entries(MARGIN_RULES).map(([rule, { source }]) => ({ rule: `margin ${rule}`, source })),
  ...Object.entries(SHOP_WINDOWS).map(([rule, { source }]) => ({ rule: `shop window ${rule}`, source })),
  { rule: 'Barcol fraction 0.9', source: NINETY_PERCENT.source },
];

/** By which published rules the plant judges, with their sources and all it chose before. */
@Injectable()
export class ReadPlantRules {
  constructor(private readonly db: DataSource) {}

  async run(): Promise<PlantRulesView> {
    const history = await this.db.query<PlantRulesView['history']>(HISTORY);
    const [newest] = history;
    const { marginRule, shopWindow, barcolFraction } = newest ?? UNTIL_SAID;
    return { now: { marginRule, shopWindow, barcolFraction }, sources: SOURCES, history };
  }
}
