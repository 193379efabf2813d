import { z } from 'zod';
import { MARGIN_RULES, SHOP_WINDOWS, type MarginRule } from '@hull-record/trade';
import { Code, Envelope, Instant, Text, receipt } from './envelope.js';
import { MakerData } from './materials.js';

/** What was found when something made was judged by a rule of the trade. It keeps the figures and limits of then. */
export const VerdictView = z
  .object({
    id: z.uuid(),
    topic: z.string().describe('what was judged, such as lay-up window'),
    verdict: z.enum(['inside', 'outside', 'cannot be judged']),
    detail: z.string(),
    figures: z
      .record(z.string(), z.union([z.number(), z.string(), z.null()]))
      .describe('computed figures; the unit is in the name'),
    rule: z.string(),
    source: z.string().describe('where the limits come from'),
    corrected: z
      .boolean()
      .describe('it was judged again after a correction; the earlier verdict stands in the history'),
  })
  .meta({ id: 'VerdictView' });
export type VerdictView = z.output<typeof VerdictView>;

const names = <T extends string>(table: Readonly<Record<T, unknown>>): [T, ...T[]] => Object.keys(table) as [T, ...T[]];

export const PlantRules = z
  .object({
    marginRule: z
      .enum(names<MarginRule>(MARGIN_RULES))
      .describe('least margin of the mold surface over the dew point: 3 C, or 5 F; they differ'),
    shopWindow: z
      .enum(names(SHOP_WINDOWS))
      .nullable()
      .describe('published window for the air of the shop; null: the limits of each schedule alone'),
    barcolFraction: z
      .number()
      .positive()
      .max(1)
      .describe("part of the resin maker's minimum hardness that is enough, such as 0.9"),
  })
  .meta({ id: 'PlantRules' });
export type PlantRules = z.output<typeof PlantRules>;

/** By which published rules the plant judges from then on. No verdict that was given before changes. */
export const SetPlantRules = Envelope.extend({ ...PlantRules.shape, reason: Text }).meta({ id: 'SetPlantRules' });
export type SetPlantRules = z.output<typeof SetPlantRules>;
export const PlantRulesReceipt = receipt('PlantRulesReceipt', PlantRules);

export const PlantRulesView = z
  .object({
    now: PlantRules,
    sources: z.array(z.object({ rule: z.string(), source: z.string() })),
    history: z.array(PlantRules.extend({ id: z.uuid(), from: Instant, reason: z.string() })),
  })
  .meta({ id: 'PlantRulesView' });
export type PlantRulesView = z.output<typeof PlantRulesView>;

/** A new issue of a material's data sheet: what is judged from then on is judged by it. */
export const IssueDataSheet = Envelope.extend({
  issue: Text.describe('name and issue of the data sheet'),
  makerData: MakerData.omit({ dataSheet: true }),
}).meta({ id: 'IssueDataSheet' });
export type IssueDataSheet = z.output<typeof IssueDataSheet>;
export const DataSheetReceipt = receipt('DataSheetReceipt', z.object({ material: Code, issue: z.string() }));

export const DataSheetView = z
  .object({ id: z.uuid(), issue: z.string(), makerData: MakerData, from: Instant })
  .meta({ id: 'DataSheetView' });
export type DataSheetView = z.output<typeof DataSheetView>;
