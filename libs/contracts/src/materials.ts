import { z } from 'zod';
import { MATERIAL_ROLES } from '@hull-record/trade';
import { Code, Envelope, Text, receipt } from './envelope.js';
import { Unit } from './amount.js';

const Range = z
  .object({ min: z.number().optional(), max: z.number().optional(), unit: Unit })
  .refine((range) => range.min !== undefined || range.max !== undefined, {
    path: ['min'],
    message: 'give min, max or both',
  })
  .refine((range) => range.min === undefined || range.max === undefined || range.min <= range.max, {
    path: ['max'],
    message: 'must not be less than min',
  });

/** What the maker's data sheet says; each value keeps its unit. What is made is judged by the issue of its time. */
export const MakerData = z
  .object({
    catalystWindow: Range.optional().describe('catalyst, percent of resin by mass, per the data sheet'),
    layUpWindow: Range.optional().describe('time to the next layer, per the data sheet'),
    dosing: z
      .array(
        z.object({
          temperature: z.object({ value: z.number(), unit: z.enum(['C', 'F']) }),
          percentByMass: z.number().positive().max(100),
        }),
      )
      .max(20)
      .optional()
      .describe('catalyst, percent by mass, by the temperature of resin and shop; between rows in a straight line'),
    minimumBarcol: z.number().min(0).max(100).optional(),
    dataSheet: Text.optional().describe('name and issue of the data sheet'),
  })
  .meta({ id: 'MakerData' });
export type MakerData = z.output<typeof MakerData>;

export const RegisterMaterial = Envelope.extend({
  code: Code,
  name: Text,
  role: z.enum(MATERIAL_ROLES),
  maker: Text.optional(),
  shelfLifeDays: z.number().int().positive().max(20_000).optional(),
  densityKgPerL: z.number().positive().max(30).optional().describe('kg/L; makes volumes into kilograms'),
  arealMassKgPerM2: z.number().positive().max(50).optional().describe('kg/m2; makes areas into kilograms'),
  pieceMassKg: z.number().positive().max(5_000).optional().describe('kg; makes pieces into kilograms'),
  lossAllowance: z.number().min(0).lt(1).optional().describe('fraction of a lot that may be lost without question'),
  makerData: MakerData.default({}),
}).meta({ id: 'RegisterMaterial' });
export type RegisterMaterial = z.output<typeof RegisterMaterial>;

export const RegisterTank = Envelope.extend({
  code: Code,
  material: Code,
  capacityKg: z.number().positive().max(1e6),
}).meta({
  id: 'RegisterTank',
});
export type RegisterTank = z.output<typeof RegisterTank>;

export const MaterialView = z
  .object({
    id: z.uuid(),
    code: z.string(),
    name: z.string(),
    role: z.string(),
    maker: z.string().nullable(),
    shelfLifeDays: z.number().nullable(),
    densityKgPerL: z.number().nullable(),
    arealMassKgPerM2: z.number().nullable(),
    pieceMassKg: z.number().nullable(),
    lossAllowance: z.number().nullable(),
    makerData: MakerData,
  })
  .meta({ id: 'MaterialView' });
export type MaterialView = z.output<typeof MaterialView>;

export const TankView = z
  .object({
    id: z.uuid(),
    code: z.string(),
    material: z.string(),
    capacityKg: z.number(),
    lot: z.string().nullable().describe('code of the lot that is in it now'),
    bookKg: z.number().nullable().describe('kg by the book: filled less drawn; the next fill measures the heel'),
  })
  .meta({ id: 'TankView' });
export type TankView = z.output<typeof TankView>;

export const RegisteredMaterial = receipt('RegisteredMaterial', z.object({ code: z.string() }));
