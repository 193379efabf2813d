import { z } from 'zod';
import { CaseForecast } from './case-forecast.js';
import { CasePlaces } from './case-places.js';
import { Day } from './envelope.js';

const figure = z.number().nullable();
/** A ratio with its limits; null where it has no bound or cannot be told. */
const Ratio = z.object({ ratio: figure, lower: figure, upper: figure });

/** A lot in one kind of layer. */
export const CaseCandidate = z.object({
  lot: z.string(),
  supplierLot: z.string().nullable(),
  material: z.string().nullable(),
  family: z.string().describe('role of the material, and the kind of layer that it is in'),
});

const Table = z
  .object({
    exposedWithClaim: z.number(),
    exposedWithout: z.number(),
    othersWithClaim: z.number(),
    othersWithout: z.number(),
  })
  .describe('hulls, whatever their age and build period');

const Row = z.object({
  named: z.string(),
  hulls: z.number().describe('exposed'),
  observed: z.number().describe('exposed hulls with a claim'),
  expected: z.number().describe('claims they would have at the rate of their strata'),
  ratio: Ratio.describe('observed over expected'),
  hazardOdds: Ratio.describe('of exposed against other hulls, conditional, exact limits: words go by the lower one'),
  p: z.number().describe('one-sided, exact, within strata'),
  q: z.number().describe('Benjamini-Hochberg over all lots tested, of every family; of other exposures over those'),
  crude: z.object({ table: Table, p: z.number() }),
  mixedWithAge: z
    .boolean()
    .describe(
      'claims expected within strata differ by a quarter from those of as many hulls at random: age mixes with exposure, and the stratified figures hold',
    ),
  hullYears: z.number(),
});

/** Lots that are in the same hulls: no figure can tell them apart, so they are one suspect. */
export const CaseClass = Row.extend({
  lots: z.array(z.string()),
  members: z.array(CaseCandidate),
  adjustedP: figure.describe('by permutation, for the leaders'),
  posterior: z
    .object({ least: z.number(), typical: z.number(), most: z.number() })
    .nullable()
    .describe('that one of its lots is bad, over all assumptions'),
  strength: z.enum(['strong', 'suggestive', 'none']),
  dose: z.object({ z: z.number(), p: z.number() }).nullable().describe('whether more of it goes with more claims'),
  nearlySame: z.array(z.string()).describe('other lots that stand out, in nearly the same hulls'),
  atShares: z
    .array(z.object({ fromShare: z.number(), hulls: z.number(), withClaim: z.number() }))
    .describe('hulls that hold at least so much of one of the lots, so that the threshold is seen to matter or not'),
  shares: z.object({ least: z.number(), median: z.number(), most: z.number() }).nullable(),
}).meta({ id: 'CaseClass' });
export type CaseClass = z.output<typeof CaseClass>;

/** Something else that hulls have in common: shown apart, never among the lots. No people. */
export const OtherExposure = Row.extend({ family: z.string() }).meta({ id: 'OtherExposure' });
export type OtherExposure = z.output<typeof OtherExposure>;

export const CaseAnswer = z
  .object({
    method: z.string(),
    hulls: z.object({
      atRisk: z.number(),
      withClaim: z.number().describe('first claims that count'),
      prompted: z.number().describe('left out: a hold or a notice brought them to light'),
      late: z.number().describe('left out: later than what is watched'),
      before: z
        .number()
        .describe('left out: their claim was known, or their watching over, when the settings were frozen'),
      beforeOrigin: z
        .number()
        .optional()
        .describe('left out: their first claim is older than their time origin; looks of earlier methods have none'),
      withoutOrigin: z.number(),
      shareWithoutOrigin: z.number().describe('of all hulls that were asked for'),
      withoutOriginWithClaim: z.number(),
      notLaunched: z.number().describe('left out: came to their time origin after the day until which is watched'),
      strata: z.number(),
    }),
    watchedUntil: Day,
    verdict: z.enum(['strong', 'suggestive', 'no lot stands out', 'the data cannot say which']),
    exploratory: z.boolean().describe('the settings were frozen after claims that they are tested by'),
    sentences: z.array(z.string()).describe('what was found, in words'),
    cannotSay: z.array(z.string()).describe('what the data cannot say'),
    next: z.array(z.string()).describe('what would settle it'),
    toInspect: z
      .array(z.object({ hull: z.string(), share: z.number().describe('of the lots that stand out most, in a layer') }))
      .optional()
      .describe('hulls without a claim that hold most of them, at most 20; looks of earlier methods have none'),
    stable: z
      .boolean()
      .optional()
      .describe(
        'one class leads under all assumptions; where not, the data cannot say which. Earlier methods have none',
      ),
    tests: z.number(),
    classes: z.array(CaseClass).describe('the most likely first'),
    untestable: z.object({
      count: z.number(),
      classes: z
        .array(z.object({ named: z.string(), hulls: z.number(), observed: z.number(), smallestP: z.number() }))
        .describe('those in most claimed hulls, at most 100'),
    }),
    cover: z.object({
      steps: z.array(
        z.object({ named: z.string(), explains: z.number(), runnerUp: z.string().nullable(), tie: z.boolean() }),
      ),
      unexplained: z.array(z.string()).describe('hulls with a claim that no class explains'),
    }),
    apart: z.array(OtherExposure),
    places: CasePlaces.nullable(),
    forecast: CaseForecast.nullable(),
  })
  .meta({ id: 'CaseAnswer' });
export type CaseAnswer = z.output<typeof CaseAnswer>;
