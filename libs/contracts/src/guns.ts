import { z } from 'zod';
import { Amount, FEEDS, Unit } from './amount.js';
import { Code, Envelope, Instant, Nonconformity, Text, page, receipt } from './envelope.js';
import { Limits } from './models.js';

const Feed = z.enum(FEEDS).describe('what it feeds the gun with');

/** Says what is hooked up to a gun from this time on, until the next hook-up of the feed; neither: it is unhooked. */
export const HookUpGun = Envelope.extend({ feed: Feed, lot: Code.optional(), tank: Code.optional() })
  .refine((hooked) => hooked.lot === undefined || hooked.tank === undefined, {
    path: ['tank'],
    message: 'name a lot or a tank, not both',
  })
  .meta({ id: 'HookUpGun' });
export type HookUpGun = z.output<typeof HookUpGun>;
export const HookUpReceipt = receipt('HookUpReceipt', z.object({ feed: z.string(), to: z.string().nullable() }));
export type HookUpReceipt = z.output<typeof HookUpReceipt>;

export const SetGun = Envelope.extend({
  catalystPercent: z.number().min(0).lt(100).describe('catalyst, per cent of the resin by mass'),
}).meta({ id: 'SetGun' });
export type SetGun = z.output<typeof SetGun>;
export const GunSettingReceipt = receipt('GunSettingReceipt', z.object({ catalystPercent: z.number() }));
export type GunSettingReceipt = z.output<typeof GunSettingReceipt>;

export const GunView = z
  .object({
    id: z.uuid(),
    code: z.string(),
    description: z.string(),
    hookUps: z.array(
      z.object({
        id: z.uuid(),
        feed: z.string(),
        lot: z.string().nullable(),
        tank: z.string().nullable(),
        from: Instant,
        until: Instant.nullable(),
      }),
    ),
    settings: z.array(z.object({ id: z.uuid(), catalystPercent: z.number(), from: Instant })),
  })
  .meta({ id: 'GunView' });
export type GunView = z.output<typeof GunView>;

const From = z
  .object({
    lot: Code.optional(),
    container: Code.optional(),
    tank: Code.optional(),
    gun: Code.optional(),
    feed: z.enum(FEEDS).optional(),
  })
  .refine(
    ({ lot, container, tank, gun }) => [lot, container, tank, gun].filter((way) => way !== undefined).length === 1,
    {
      path: ['lot'],
      message: 'name one of these: lot, container, tank, gun',
    },
  );

/** Spreads what a tank, drum or gun lost over the layers sprayed from it. */
export const ApportionDrop = Envelope.extend({
  from: From,
  amount: Amount.omit({ basis: true }).describe('the drop: before less after'),
  over: z
    .array(
      z.object({
        layer: z.uuid(),
        weight: z.number().positive().max(1e9).describe('area, target, or 1 for equal parts'),
      }),
    )
    .min(1)
    .max(200),
}).meta({ id: 'ApportionDrop' });
export type ApportionDrop = z.output<typeof ApportionDrop>;
export const DropReceipt = receipt(
  'DropReceipt',
  z.object({
    kg: z.number(),
    parts: z.array(z.object({ layer: z.uuid(), quantity: z.string(), unit: z.string() })),
    nonconformities: z.array(Nonconformity),
    warnings: z.array(z.string()),
  }),
);
export type DropReceipt = z.output<typeof DropReceipt>;

const grams = z.number().min(0).max(1e6).optional();

/** A check of a gauge, gun, dispenser, scale or oven. */
export const CheckEquipment = Envelope.extend({
  what: z.enum([
    'timed catch',
    'cup test',
    'gel test',
    'reference film',
    'reference hardness',
    'reference mass',
    'reference temperature',
    'pump ratio',
    'inspection',
  ]),
  value: z.number().optional().describe('what was read, or the error found'),
  unit: Unit.optional(),
  caught: z
    .object({ seconds: z.number().positive().max(3_600), resinG: grams, catalystG: grams, glassG: grams })
    .optional()
    .describe('of a timed catch: grams in the cups'),
  limits: Limits.optional(),
  good: z.boolean().optional().describe('when there is no value with limits to judge by'),
  certificate: Text.optional(),
  note: Text.optional(),
})
  .refine((check) => (check.value === undefined) === (check.unit === undefined), {
    path: ['unit'],
    message: 'a value has its unit',
  })
  .meta({ id: 'CheckEquipment' });
export type CheckEquipment = z.output<typeof CheckEquipment>;
export const EquipmentCheckReceipt = receipt(
  'EquipmentCheckReceipt',
  z.object({
    good: z.boolean(),
    value: z.number().nullable(),
    unit: z.string().nullable(),
    worked: z.record(z.string(), z.number()).describe('of a timed catch: rates and per cents'),
  }),
);
export type EquipmentCheckReceipt = z.output<typeof EquipmentCheckReceipt>;

export const EquipmentCheckView = z
  .object({
    id: z.uuid(),
    what: z.string(),
    value: z.number().nullable(),
    unit: z.string().nullable(),
    limits: Limits.nullable(),
    good: z.boolean(),
    measured: z.record(z.string(), z.number()),
    certificate: z.string().nullable(),
    note: z.string().nullable(),
    by: z.string(),
    happenedAt: Instant,
    disposition: z.string().nullable(),
  })
  .meta({ id: 'EquipmentCheckView' });
export type EquipmentCheckView = z.output<typeof EquipmentCheckView>;

/** A reading taken, or something sprayed, with equipment that may have been unfit then. */
export const Suspect = z
  .object({
    id: z.uuid(),
    kind: z.enum(['reading', 'used']),
    what: z.string(),
    part: z.string(),
    hull: z.string().nullable(),
    happenedAt: Instant,
  })
  .meta({ id: 'Suspect' });
export type Suspect = z.output<typeof Suspect>;
export const SuspectPage = page('SuspectPage', Suspect);
export type SuspectPage = z.output<typeof SuspectPage>;

export const EmptyTank = Envelope.extend({ cleaned: z.boolean(), note: Text.optional() }).meta({ id: 'EmptyTank' });
export type EmptyTank = z.output<typeof EmptyTank>;
export const TankEmptiedReceipt = receipt(
  'TankEmptiedReceipt',
  z.object({ cleaned: z.boolean(), nonconformities: z.array(Nonconformity), warnings: z.array(z.string()) }),
);
export type TankEmptiedReceipt = z.output<typeof TankEmptiedReceipt>;
