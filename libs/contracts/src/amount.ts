import { z } from 'zod';
import { BASES, MATERIAL_ROLES, UNITS, type UnitCode } from '@hull-record/trade';
import { Code, Text } from './envelope.js';

const PLAIN_DECIMAL = /^-?\d{1,12}(\.\d{1,9})?$/;

/** A decimal as typed, kept digit by digit: a string, or a JSON number that prints as a plain decimal. */
export const Decimal = z
  .union([z.string(), z.number()])
  .transform((value) => (typeof value === 'number' ? plain(value) : value.trim()))
  .refine((text) => PLAIN_DECIMAL.test(text), 'write a plain decimal, at most 12 digits before and 9 after the point')
  .describe('decimal number, as a string or a JSON number');

const plain = (value: number): string =>
  String(value).includes('e') ? value.toFixed(9).replace(/\.?0+$/, '') : String(value);

export const Positive = Decimal.refine((text) => Number(text) > 0, 'must be more than zero');

const codes = Object.keys(UNITS) as [UnitCode, ...UnitCode[]];
export const Unit = z.enum(codes).describe('unit of measure');

/** How an amount is known, strongest first. */
export const Basis = z.enum(BASES).describe('how the amount is known, strongest first');

/** An amount of material as entered; kilograms follow from the material's data. */
export const Amount = z.object({ quantity: Positive, unit: Unit, basis: Basis }).meta({ id: 'Amount' });
export type Amount = z.output<typeof Amount>;

export const AmountView = z
  .object({ quantity: z.string(), unit: z.string(), basis: z.string(), kg: z.number() })
  .meta({ id: 'AmountView' });
export type AmountView = z.output<typeof AmountView>;

/** Material that nobody can name. A search then says "possibly any of", never nothing. */
export const Unidentified = z
  .object({
    role: z.enum(MATERIAL_ROLES).describe('what it was taken for'),
    looks: Text.describe('what it looked like'),
    foundAt: Text.optional().describe('where it stood'),
    likely: z
      .array(Code)
      .max(100)
      .default([])
      .describe('lots that it may be of; when none is named, every lot of its role that had come by then'),
  })
  .meta({ id: 'Unidentified' });
export type Unidentified = z.output<typeof Unidentified>;

/** The ways to say what was taken; exactly one is named. */
const WAYS = ['lot', 'container', 'tank', 'gun', 'unidentified'] as const;

export const FEEDS = ['resin', 'catalyst', 'glass'] as const;

/** What was taken: a lot by code or id, whatever lot was in a tank when it happened, or what nobody can name. */
export const Taken = z
  .object({
    lot: Code.optional().describe('lot code or id'),
    tank: Code.optional().describe('tank code: the lot that was in it when this happened'),
    container: Code.optional().describe('label of a container: of its lot'),
    gun: Code.optional().describe(
      'gun code: what fed it when this happened; without a feed, resin and catalyst together',
    ),
    feed: z.enum(FEEDS).optional().describe('of a gun: which of its feeds the amount is of'),
    unidentified: Unidentified.optional().describe('what is known of material that nobody can name'),
    amount: Amount,
  })
  .refine((taken) => WAYS.filter((way) => taken[way] !== undefined).length === 1, {
    path: ['lot'],
    message: `name one of these: ${WAYS.join(', ')}`,
  })
  .refine((taken) => taken.feed === undefined || taken.gun !== undefined, {
    path: ['feed'],
    message: 'only a gun has feeds: name the gun',
  })
  .meta({ id: 'Taken' });
export type Taken = z.output<typeof Taken>;
