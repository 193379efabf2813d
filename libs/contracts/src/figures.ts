import { z } from 'zod';
import { Code, Instant } from './envelope.js';
import { Laminate } from './laminate.js';

const size = z.number().positive().max(20_000);

/** What a mix is asked for; the per cent is given, or read from the data sheet at a temperature. */
export const DoseQuery = z
  .object({
    resinKg: z.coerce.number().positive().max(5_000).describe('kg to be catalysed'),
    catalyst: Code.describe('code of the catalyst, for its density'),
    percentByMass: z.coerce.number().positive().max(100).optional(),
    temperature: z.coerce.number().optional().describe('of resin and shop'),
    unit: z.enum(['C', 'F']).default('C'),
  })
  .refine((asked) => (asked.percentByMass === undefined) !== (asked.temperature === undefined), {
    path: ['percentByMass'],
    message: 'give the per cent by mass, or the temperature to read it at in the data sheet',
  });
export type DoseQuery = z.output<typeof DoseQuery>;

/** Catalyst for a mix, with the window it is judged by and the cautions that go with mixing. */
export const DoseView = z
  .object({
    material: z.string(),
    catalyst: z.string(),
    resinKg: z.number(),
    percentByMass: z.number(),
    percentByVolume: z.number().nullable().describe('another number; null: a density is not known'),
    grams: z.number(),
    millilitres: z.number().nullable(),
    verdict: z.enum(['inside', 'too little', 'too much', 'cannot be judged']),
    stop: z.string().nullable().describe('why not to mix so'),
    window: z.object({ minPercent: z.number(), maxPercent: z.number() }).nullable(),
    source: z.string(),
    cautions: z.array(z.string()),
  })
  .meta({ id: 'DoseView' });
export type DoseView = z.output<typeof DoseView>;

/** A repair that is planned: the damage, what it goes through, and the plies that shall replace it. */
export const PlanPatch = z
  .object({
    damage: z
      .union([z.object({ diameterMm: size }), z.object({ lengthMm: size, widthMm: size })])
      .describe('the opening that is left when all damaged laminate is out'),
    originalMm: z.number().positive().max(500).describe('thickness of the laminate or skin, gel coat not included'),
    damageDepthMm: z.number().positive().max(500),
    taperRatio: z.number().positive().max(200).default(12).describe('length of the taper to its depth'),
    sides: z.enum(['one', 'both']).default('one'),
    skin: z.enum(['outer', 'inner']).optional().describe('of a cored panel: which skin; each is planned by itself'),
    plies: Laminate.shape.plies.describe('from the bottom of the grind-out'),
  })
  .meta({ id: 'PlanPatch' });
export type PlanPatch = z.output<typeof PlanPatch>;

export const PatchPlanView = z
  .object({
    depth: z.enum(['partially-through', 'through-thickness']),
    surfaceOnly: z.boolean().describe('under 2 mm deep and not through: typically no matter of structure'),
    taperMm: z.number(),
    taperDegrees: z.number(),
    grindOut: z.object({ lengthMm: z.number(), widthMm: z.number(), areaMm2: z.number() }),
    plies: z.array(
      z.object({
        lengthMm: z.number(),
        widthMm: z.number(),
        areaMm2: z.number(),
        glassKg: z.number(),
        resinKg: z.number(),
      }),
    ),
    sides: z.enum(['one', 'both']).describe('of both: the plies are of one side, and are laid twice'),
    patchMm: z.number(),
    glassKg: z.number().describe('kg of all sides, without waste'),
    resinKg: z.number(),
    findings: z.array(z.object({ rule: z.string(), detail: z.string() })),
    sources: z.array(z.string()),
    cautions: z.array(z.string()),
  })
  .meta({ id: 'PatchPlanView' });
export type PatchPlanView = z.output<typeof PatchPlanView>;

export const CureQuery = z.object({
  baseC: z.coerce.number().min(-40).max(100).default(18).describe('C above which degree-hours are counted'),
});
export type CureQuery = z.output<typeof CureQuery>;

/** How warm the layers of a part have lain since each ended, by the climate log of the area it was made in. */
export const CureView = z
  .object({
    baseC: z.number(),
    layers: z.array(
      z.object({
        layer: z.string(),
        area: z.string().nullable().describe('null: it was recorded without an area, so no log belongs to it'),
        endedAt: Instant,
        points: z.number(),
        until: Instant.nullable().describe('last point of the log'),
        degreeHours: z.number().nullable().describe('C h above the base; null: fewer than two points'),
        warmHours: z.number().describe('longest time that every point was warm enough, without gaps in the log'),
        cured: z.boolean().describe('the warm time is as long as the rule asks'),
      }),
    ),
    rule: z.string(),
    source: z.string(),
  })
  .meta({ id: 'CureView' });
export type CureView = z.output<typeof CureView>;
