import { z } from 'zod';
import { AREAL_MASS_UNITS, readArealMassUnit, TradeError } from '@hull-record/trade';

/** Says of a text that is no unit of areal mass what to write instead; a bare "oz" is asked which. */
const remedy = (given: unknown): string => {
  try {
    return `write ${readArealMassUnit(String(given))}`;
  } catch (error) {
    if (error instanceof TradeError) return error.message;
    throw error;
  }
};

/** Mass of dry reinforcement per area. Mat is sold by the square foot, cloth by the square yard: both are written out. */
export const ArealMass = z
  .object({
    value: z.number().positive().max(100_000),
    unit: z.enum(AREAL_MASS_UNITS, { error: ({ input }) => remedy(input) }),
  })
  .meta({ id: 'ArealMass' });
export type ArealMass = z.output<typeof ArealMass>;

/** The reinforcement of a layer, ply by ply, and how far its glass and thickness may be from it. */
export const Laminate = z
  .object({
    plies: z
      .array(z.object({ arealMass: ArealMass, fibreMassFraction: z.number().gt(0).lt(1) }))
      .min(1)
      .max(40)
      .describe('dry reinforcement of each ply, and the part of its laminate that is fibre, by mass'),
    tolerance: z
      .number()
      .min(0)
      .lt(1)
      .default(0.1)
      .describe('fraction either way for glass used and thickness measured; 0.1 is common practice'),
  })
  .meta({ id: 'Laminate' });
export type Laminate = z.output<typeof Laminate>;

/** What a layer takes and becomes by its schedule, without waste: from first principles, glass and cured polyester. */
export const LayerDemand = z
  .object({
    thicknessMm: z.number(),
    massKgPerM2: z.number(),
    fibreMassFraction: z.number(),
    glassKg: z.number().nullable().describe('kg; null: the schedule names no area'),
    resinKg: z.number().nullable(),
    source: z.string(),
  })
  .meta({ id: 'LayerDemand' });
export type LayerDemand = z.output<typeof LayerDemand>;
