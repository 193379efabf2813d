import { z } from 'zod';
import { Unit } from './amount.js';
import { Code, Day, Envelope, Instant, Text, receipt } from './envelope.js';
import { PartKind, READING_KINDS } from './models.js';

/** What is charted of the climate in which layers were made, as their records say it. */
export const CLIMATE_KINDS = [
  'air temperature',
  'relative humidity',
  'mold temperature',
  'surface above dew point',
] as const;

/** What can be charted, hull by hull. Nothing is charted by person. */
export const CHARTED = [...READING_KINDS, ...CLIMATE_KINDS] as const;
export type Charted = (typeof CHARTED)[number];

/** Sets of run rules: limits alone, the four of Western Electric (1956), the eight of Nelson (1984). */
export const RULE_SETS = ['limits alone', 'Western Electric', 'Nelson'] as const;

const Settings = z.object({
  rules: z.enum(RULE_SETS).describe('which run rules are looked for'),
  run: z.coerce.number().int().min(7).max(9).describe('hulls in a row on one side that count: 7, 8 and 9 all occur'),
  weight: z.coerce.number().gt(0).max(1).describe('of the newest hull in the weighted mean'),
  reach: z.coerce.number().min(1).max(6).describe('limits of the weighted mean, in its standard deviations'),
  slack: z.coerce.number().min(0).max(3).describe('of the cumulative sum, in standard deviations of hull means'),
  limit: z.coerce.number().min(1).max(20).describe('at which a cumulative sum signals, in the same'),
});
export type ChartSettings = z.output<typeof Settings>;

const Of = z.object({
  model: Code.describe('code of the model'),
  part: PartKind.describe('kind of part'),
  layer: Code.optional().describe('code of the layer; all layers of the part when left out'),
  mold: Code.optional().describe('only parts of this mold'),
  gun: Code.optional().describe('only layers that this gun sprayed'),
  area: Code.optional().describe('only layers made in this area of the shop'),
});

const Period = z.object({
  from: Day.optional().describe('first day, by the clock of the plant, of the first reading of a hull'),
  to: Day.optional().describe('last day'),
});

export const ReadChartQuery = z
  .strictObject({ ...Of.shape, ...Period.shape, unit: Unit.optional(), ...Settings.partial().shape })
  .describe('a chart by a person does not exist: any other word is refused');
export type ReadChartQuery = z.output<typeof ReadChartQuery>;

/** Freezes the limits of a chart from the hulls of a chosen period: they judge what follows, until others are frozen. */
export const FreezeChart = Envelope.extend({
  ...Of.shape,
  from: Day,
  to: Day,
  settings: Settings,
  reason: Text.describe('why this period shows the process as it should be'),
}).meta({ id: 'FreezeChart' });
export type FreezeChart = z.output<typeof FreezeChart>;

const Figures = z.object({
  centre: z.number(),
  sigma: z.number().describe('of hull means, from their moving ranges'),
  within: z.number().nullable().describe('standard deviation within hulls'),
});

export const FrozenChart = receipt(
  'FrozenChart',
  z.object({ hulls: z.number(), warnings: z.array(z.string()), unit: z.string(), figures: Figures }),
);

const Frozen = z
  .object({
    id: z.uuid(),
    from: Day,
    to: Day,
    hulls: z.number().describe('that the limits are drawn from'),
    settings: Settings,
    figures: Figures.describe('in the unit of the chart'),
    reason: z.string(),
    by: z.string(),
    happenedAt: Instant,
  })
  .meta({ id: 'FrozenLimits' });
export type FrozenLimits = z.output<typeof Frozen>;

const Line = z.object({ centre: z.number(), lower: z.number(), upper: z.number() });

const Rule = z.object({
  kind: z.enum(['beyond', 'trend', 'alternating', 'near', 'far']),
  count: z.number(),
  of: z.number().optional(),
  distance: z.number().optional().describe('standard deviations'),
});

const Point = z.object({
  hull: z.string().nullable().describe('null while the part is in none'),
  part: z.string(),
  at: Instant.describe('of its first reading'),
  readings: z.number(),
  mean: z.number(),
  movingRange: z.number().nullable(),
  within: Line.extend({ deviation: z.number() }).nullable().describe('null of a single reading'),
  ewma: z.object({ value: z.number(), lower: z.number(), upper: z.number(), signal: z.boolean() }),
  cusum: z.object({
    high: z.number(),
    low: z.number(),
    signal: z.boolean(),
    since: z.number().describe('hulls since the sum that signals left zero; the change is dated to the first of them'),
  }),
  fired: z.array(z.number()).describe('places, from 0, of the rules that this hull completes'),
  rangeOut: z.boolean(),
  spreadOut: z.boolean(),
});
export type ChartPoint = z.output<typeof Point>;

const Interval = z.object({ lower: z.number(), upper: z.number() }).nullable();
const Index = z.object({
  sigma: z.number(),
  cp: z.number().nullable().describe('null where the specification has one side'),
  cpInterval: Interval,
  cpLower: z.number().nullable(),
  cpUpper: z.number().nullable(),
  cpk: z.number().nullable(),
  cpkInterval: Interval.describe('95 %; an index is never told without it'),
});

const Skew = z.object({ coefficient: z.number(), error: z.number(), skewed: z.boolean() }).nullable();

const Capability = z.discriminatedUnion('says', [
  z.object({ says: z.literal('no specification') }),
  z.object({ says: z.literal('specification changed') }),
  z.object({ says: z.literal('too few'), hulls: z.number() }),
  z.object({ says: z.literal('gauge too coarse'), steps: z.number().describe('distinct; five are needed') }),
  z.object({
    says: z.literal('indices'),
    steps: z.number(),
    byIntervals: z.boolean(),
    ofLogarithms: z.boolean(),
    mean: z.number(),
    readings: z.number(),
    effective: z.number().describe('readings of different hulls that they are worth'),
    skew: Skew,
    short: Index.nullable().describe('Cp, Cpk: by moving ranges of hull means and the spread within'),
    long: Index.describe('Pp, Ppk: by the spread of all readings'),
  }),
]);

/** A process by its hulls: means, moving ranges, spread within, weighted mean, cumulative sum, and how it fits its limits. */
export const ChartView = z
  .object({
    what: z.enum(CHARTED),
    unit: z.string(),
    of: Of,
    layerName: z.string().nullable(),
    molds: z.array(z.string()).describe('to choose from'),
    guns: z.array(z.string()),
    areas: z.array(z.string()),
    settings: Settings,
    rules: z.array(Rule),
    frozen: Frozen.nullable().describe('by which it is judged; null: by figures of the hulls shown'),
    history: z.array(Frozen).describe('every freezing of this chart, the newest first'),
    hulls: z.number(),
    leftOut: z.number().describe('older hulls that are not shown'),
    fewest: z.number().describe('hulls below which limits are not to be relied on'),
    why: z.enum(['too few hulls', 'no spread']).nullable().describe('why there is no chart'),
    means: Line.nullable(),
    movingRange: Line.nullable(),
    within: z.number().nullable(),
    sumLimit: z.number().nullable(),
    points: z.array(Point),
    stable: z.boolean().nullable(),
    following: z.object({ coefficient: z.number(), correlated: z.boolean() }).nullable().describe('of hull means'),
    specification: z
      .object({ min: z.number().nullable(), max: z.number().nullable(), source: z.string() })
      .nullable()
      .describe('of single readings; never a control limit'),
    capability: Capability,
  })
  .meta({ id: 'ChartView' });
export type ChartView = z.output<typeof ChartView>;

export const ChartList = z
  .array(
    z.object({
      what: z.enum(CHARTED),
      model: z.string(),
      part: PartKind,
      layer: z.string().nullable(),
      layerName: z.string().nullable(),
      unit: z.string(),
      frozenAt: Instant.nullable(),
    }),
  )
  .meta({ id: 'ChartList' });
export type ChartList = z.output<typeof ChartList>;
