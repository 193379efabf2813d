import { z } from 'zod';
import { Code, Day, Envelope, Instant, PageQuery, Text, page, receipt } from './envelope.js';
import { Place } from './place.js';
import { ClaimTerm } from './warranty.js';

const size = z.number().positive().max(20_000);

/** Pictures that a claim is asked for. */
export const CLAIM_PHOTOS = ['HIN plate', 'whole side', 'zone with scale', 'close-up with ruler', 'other'] as const;

/** How it came to light; the last two are prompted, and are left out where hulls are compared. */
export const FOUND_BY = ['owner or dealer', 'inspection of a hold', 'after a notice'] as const;

/** Where a spot is, and how large. */
export const SPOT = {
  layer: Code.optional(),
  place: Place,
  lengthMm: size.optional(),
  widthMm: size.optional(),
  depthMm: size.optional(),
  counted: z.number().int().positive().max(100_000).optional(),
  countedAreaM2: z.number().positive().max(1_000).optional(),
  note: Text.optional(),
};

type Counted = { readonly counted?: number | undefined; readonly countedAreaM2?: number | undefined };
export const isCounted = (spot: Counted): boolean =>
  (spot.counted === undefined) === (spot.countedAreaM2 === undefined);
export const COUNTED = {
  path: ['countedAreaM2'],
  message: 'a count needs the area it was counted in, and the area a count',
};

/** A spot of what is claimed, on a part of the hull; it becomes a defect. */
export const ClaimedSpot = z
  .object({ part: Code.optional().describe('default: the hull molding'), ...SPOT })
  .refine(isCounted, COUNTED)
  .meta({ id: 'ClaimedSpot' });
export type ClaimedSpot = z.output<typeof ClaimedSpot>;

/** Readings of a moisture meter: relative figures of one meter on one scale, never per cent of water. */
export const MoistureSurvey = z
  .object({
    meter: Text,
    scale: Text.describe('name of the scale that it was read on'),
    coating: z.enum(['removed at the spots', 'on', 'not known']),
    readings: z
      .array(z.object({ place: Place.optional(), value: z.number().min(0).max(10_000) }))
      .min(1)
      .max(300),
  })
  .meta({ id: 'MoistureSurvey' });
export type MoistureSurvey = z.output<typeof MoistureSurvey>;

const Filed = Envelope.extend({
  kind: Code.describe('what is claimed: see GET /api/defect-kinds'),
  reference: Code.optional().describe("the claimant's own number"),
  reportedOn: Day.describe('day on which it was reported'),
  noticedOn: Day.optional().describe('day on which it was first seen, when that is known'),
  symptoms: Text.describe('no personal data here'),
  grade: z.string().max(4).optional().describe('blisters: ASTM D714 grade, such as 6M'),
  looks: z.enum(['round', 'irregular']).optional().describe('blisters: flat and round, or irregular'),
  spots: z.array(ClaimedSpot).max(60).default([]),
  hoursAshore: z.number().min(0).max(100_000).optional(),
  moisture: MoistureSurvey.optional(),
});

const inOrder = (claim: z.output<typeof Filed>): boolean =>
  claim.noticedOn === undefined || claim.noticedOn <= claim.reportedOn;
const ORDER = { path: ['noticedOn'], message: 'must not be after reportedOn' };

/** Files a claim at the warranty desk. */
export const FileClaim = Filed.extend({
  dealer: Code.optional().describe('who reported it; default: the dealer who has the hull or had it last'),
  foundBy: z.enum(FOUND_BY).default('owner or dealer'),
})
  .refine(inOrder, ORDER)
  .meta({ id: 'FileClaim' });
export type FileClaim = z.output<typeof FileClaim>;

/** Files a claim as the dealer of the hull. */
export const FileOwnClaim = Filed.refine(inOrder, ORDER).meta({ id: 'FileOwnClaim' });
export type FileOwnClaim = z.output<typeof FileOwnClaim>;

export const ClaimReceipt = receipt(
  'ClaimReceipt',
  z.object({
    mark: z.string().describe('C1, C2 ... of its hull'),
    defects: z.array(z.string()).describe('marks of the defects it became, with their parts'),
    photosAsked: z.array(z.string()),
    says: z.array(z.string()),
  }),
);
export type ClaimReceipt = z.output<typeof ClaimReceipt>;

export const AddClaimPhoto = Envelope.extend({ shows: z.enum(CLAIM_PHOTOS) }).meta({ id: 'AddClaimPhoto' });
export type AddClaimPhoto = z.output<typeof AddClaimPhoto>;

export const CLAIM_DECISIONS = ['accepted', 'part paid', 'goodwill', 'refused', 'more is asked'] as const;

/** Decides on a claim. The terms are data; a person decides, and says why. A later decision takes the place of it. */
export const DecideClaim = Envelope.extend({
  decision: z.enum(CLAIM_DECISIONS),
  reason: Text,
  paidPercent: z.number().min(0).max(100).optional().describe('of the cost; required when part is paid'),
  hours: z.number().min(0).max(100_000).optional().describe('hours of work'),
  cost: z
    .object({
      amount: z.string().regex(/^\d{1,9}(\.\d{1,2})?$/, 'is an amount such as 1840.50'),
      currency: z.string().regex(/^[A-Z]{3}$/, 'is a code of ISO 4217'),
    })
    .optional(),
})
  .refine((claim) => claim.decision !== 'part paid' || claim.paidPercent !== undefined, {
    path: ['paidPercent'],
    message: 'is needed when part is paid',
  })
  .meta({ id: 'DecideClaim' });
export type DecideClaim = z.output<typeof DecideClaim>;

/** Marks a claim as prompted, or as not, when that came to light later. */
export const MarkClaim = Envelope.extend({ foundBy: z.enum(FOUND_BY), reason: Text }).meta({ id: 'MarkClaim' });
export type MarkClaim = z.output<typeof MarkClaim>;
export const ClaimMarkReceipt = receipt('ClaimMarkReceipt', z.object({ prompted: z.boolean() }));
export type ClaimMarkReceipt = z.output<typeof ClaimMarkReceipt>;

export const ClaimDecisionReceipt = receipt(
  'ClaimDecisionReceipt',
  z.object({ decision: z.string(), term: ClaimTerm }),
);
export type ClaimDecisionReceipt = z.output<typeof ClaimDecisionReceipt>;

export const ClaimDecisionView = z
  .object({
    id: z.uuid(),
    decision: z.enum(CLAIM_DECISIONS),
    reason: z.string(),
    paidPercent: z.number().nullable(),
    hours: z.number().nullable(),
    cost: z.object({ amount: z.string(), currency: z.string() }).nullable(),
    term: ClaimTerm.describe('what the terms said when it was decided'),
    by: z.string(),
    happenedAt: Instant,
  })
  .meta({ id: 'ClaimDecisionView' });

export const ClaimListItem = z.object({
  id: z.uuid(),
  mark: z.string(),
  hull: z.string(),
  hin: z.string().nullable(),
  model: z.string(),
  kind: z.string(),
  reportedOn: Day,
  noticedOn: Day.nullable(),
  dealer: z.string().nullable(),
  reference: z.string().nullable(),
  prompted: z
    .boolean()
    .describe(
      'found by an inspection of a hold, or reported after a letter of a notice on its hull was mailed: kept, and not compared',
    ),
  first: z.boolean().describe('the first of its hull and kind: the one that is analysed'),
  decision: z.enum(CLAIM_DECISIONS).nullable(),
});
export type ClaimListItem = z.output<typeof ClaimListItem>;
export const ClaimPage = page('ClaimPage', ClaimListItem.meta({ id: 'ClaimListItem' }));
export type ClaimPage = z.output<typeof ClaimPage>;

export const ListClaimsQuery = PageQuery.extend({
  hull: Code.optional(),
  kind: Code.optional(),
  dealer: Code.optional(),
  undecided: z
    .stringbool()
    .optional()
    .describe('only those on which nobody decided, or of which more is asked; false: only those decided on'),
  prompted: z
    .stringbool()
    .optional()
    .describe('only those that a hold or a notice brought to light; false: the others'),
});
export type ListClaimsQuery = z.output<typeof ListClaimsQuery>;

export const ClaimView = ClaimListItem.extend({
  symptoms: z.string(),
  grade: z.string().nullable(),
  looks: z.enum(['round', 'irregular']).nullable(),
  hint: z.string().nullable().describe('where to look, by the looks of a blister; no finding'),
  foundBy: z.enum(FOUND_BY),
  foundByReason: z.string().nullable().describe('why it was marked so later'),
  hoursAshore: z.number().nullable(),
  moisture: MoistureSurvey.nullable(),
  says: z.array(z.string()).describe('what speaks against the survey'),
  defects: z.array(z.object({ id: z.uuid(), mark: z.string(), part: z.string(), place: Place, zone: z.string() })),
  photos: z.array(
    z.object({
      id: z.uuid(),
      shows: z.enum(CLAIM_PHOTOS),
      originalSha256: z.string(),
      redactedOn: Day.nullable().describe('day on which areas of it were blacked out'),
    }),
  ),
  photosAsked: z.array(z.string()).describe('kinds of picture that are still asked for'),
  term: ClaimTerm.describe('what the terms say now'),
  decisions: z.array(ClaimDecisionView).describe('the newest first; it holds'),
  by: z.string(),
  happenedAt: Instant,
}).meta({ id: 'ClaimView' });
export type ClaimView = z.output<typeof ClaimView>;

/** What a dealer sees of a claim that concerns an own hull. */
export const OwnClaim = z
  .object({
    id: z.uuid(),
    mark: z.string(),
    kind: z.string(),
    reference: z.string().nullable(),
    reportedOn: Day,
    symptoms: z.string(),
    grade: z.string().nullable(),
    says: z.array(z.string()),
    photos: z.array(z.enum(CLAIM_PHOTOS)),
    photosAsked: z.array(z.string()),
    decision: z
      .object({ decision: z.enum(CLAIM_DECISIONS), paidPercent: z.number().nullable(), decidedAt: Instant })
      .nullable(),
  })
  .meta({ id: 'OwnClaim' });
export type OwnClaim = z.output<typeof OwnClaim>;
