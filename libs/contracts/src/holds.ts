import { z } from 'zod';
import { HULL_DISPOSITIONS, HULL_STATES } from '@hull-record/trade';
import { Code, Envelope, Instant, Nonconformity, PageQuery, Text, page, receipt } from './envelope.js';
import { recomputing } from './recomputations.js';

const MinShare = z.number().min(0).max(1).describe("least share, compared with the hull's largest layer share");

/** How far a hold reaches; what is left out bounds nothing. */
export const HoldScopeFields = {
  minShare: MinShare.default(0),
  zone: Text.optional().describe('of the laminate schedule; what is of no one zone, such as a joint, stays in'),
  from: Instant.optional().describe('what was made with it before is out'),
  until: Instant.optional().describe('what was made with it afterwards is out'),
};

const ordered = ({ from, until }: { from?: string | undefined; until?: string | undefined }): boolean =>
  from === undefined || until === undefined || Date.parse(from) <= Date.parse(until);
const ENDS_BEFORE = { path: ['until'], message: 'must not be before it begins' };

/** Places a hold, from `happenedAt` on, on equipment, a state of a mold, or a period of the plant. On lots: see `/api/lots/{lot}/holds`. */
export const HoldOther = Envelope.extend({
  on: z.discriminatedUnion('what', [
    z.object({ what: z.literal('equipment'), code: Code }),
    z.object({ what: z.literal('mold'), code: Code, state: z.number().int().min(1).max(10_000).optional() }),
    z.object({ what: z.literal('period') }),
  ]),
  kind: z.enum(['quality', 'safety']).describe('nobody goes on over a safety hold, and quality alone lifts it'),
  reason: Text,
  zone: HoldScopeFields.zone,
  from: HoldScopeFields.from,
  until: HoldScopeFields.until,
})
  .refine(ordered, ENDS_BEFORE)
  .refine(({ on, from, until }) => on.what !== 'period' || (from !== undefined && until !== undefined), {
    path: ['from'],
    message: 'say from when until when the period is',
  })
  .meta({ id: 'HoldOther' });
export type HoldOther = z.output<typeof HoldOther>;

/** What a hold reaches when it is placed. */
export const HoldPlaced = z
  .object({
    kind: z.string(),
    reached: z.number().describe('hulls, and parts that are in none; their list is kept'),
    below: z.number().describe('that hold less than the least share, or are outside zone and period'),
    nonconformities: z.array(Nonconformity),
  })
  .meta({ id: 'HoldPlaced' });
export type HoldPlaced = z.output<typeof HoldPlaced>;
export const HoldReceipt = receipt('HoldReceipt', HoldPlaced);
export type HoldReceipt = z.output<typeof HoldReceipt>;

/** Narrows a hold; what is left out stays as it is. */
export const NarrowHold = Envelope.extend({
  minShare: MinShare.optional(),
  zone: HoldScopeFields.zone,
  from: HoldScopeFields.from,
  until: HoldScopeFields.until,
  reason: Text,
})
  .refine(ordered, ENDS_BEFORE)
  .meta({ id: 'NarrowHold' });
export type NarrowHold = z.output<typeof NarrowHold>;
export const NarrowReceipt = receipt('NarrowReceipt', z.object({ reached: z.number(), below: z.number() }));
export type NarrowReceipt = z.output<typeof NarrowReceipt>;

/** Says of hulls, or of parts that are in none, what was found or done. */
export const DisposeHeld = Envelope.extend({
  hulls: z.array(Code).max(500).default([]).describe('hull numbers or HINs'),
  parts: z.array(Code).max(500).default([]).describe('parts that are in no hull'),
  what: z
    .enum(HULL_DISPOSITIONS)
    .describe(
      'found: the fault is in it; checked: looked at, no fault; repaired; cleared: judged not to be concerned; not reachable: tried, and how is in the note',
    ),
  doneBy: z.array(Code).max(20).default([]).describe('badges of who looked or worked; default: who enters it'),
  note: Text.optional().describe('no personal data here'),
  evidence: Text.optional().describe('where it is to be seen: photo, reading, repair, letter of the yard'),
})
  .refine(({ hulls, parts }) => hulls.length + parts.length > 0, { path: ['hulls'], message: 'name a hull or a part' })
  .refine(({ what, note }) => (what !== 'not reachable' && what !== 'cleared') || note !== undefined, {
    path: ['note'],
    message: 'say why',
  })
  .meta({ id: 'DisposeHeld' });
export type DisposeHeld = z.output<typeof DisposeHeld>;
export const DisposedReceipt = receipt('DisposedReceipt', z.object({ what: z.string(), hulls: z.number() }));
export type DisposedReceipt = z.output<typeof DisposedReceipt>;

/** Closes a hold: every hull it reaches is disposed of. */
export const CloseHold = Envelope.extend({ reason: Text }).meta({ id: 'CloseHold' });
export type CloseHold = z.output<typeof CloseHold>;
export const ClosedReceipt = receipt(
  'ClosedReceipt',
  z.object({ closed: z.literal(true), hulls: z.number(), warnings: z.array(z.string()) }),
);
export type ClosedReceipt = z.output<typeof ClosedReceipt>;

export const HeldThing = z
  .object({
    what: z.enum(['lot', 'container', 'equipment', 'mold state', 'period']),
    code: z.string().nullable().describe('of the lot, container, equipment or mold; null for a period'),
    lot: z.string().nullable(),
    state: z.number().nullable().describe('of the mold'),
  })
  .meta({ id: 'HeldThing' });
export type HeldThing = z.output<typeof HeldThing>;

const ended = z
  .object({ how: z.enum(['lifted', 'closed']), reason: z.string(), happenedAt: Instant, by: z.string() })
  .nullable();
const said = { id: z.uuid(), happenedAt: Instant, by: z.string() };

export const ListHoldsQuery = PageQuery.extend({ which: z.enum(['open', 'all']).default('open') });
export type ListHoldsQuery = z.output<typeof ListHoldsQuery>;
export const HoldListItem = z
  .object({
    ...said,
    on: HeldThing,
    kind: z.string(),
    reason: z.string(),
    ended,
    atHold: z.number().describe('hulls, and parts in none, on the list of when it was placed'),
    disposed: z.number().describe('of which so many have a disposition other than found'),
    duty: z.string().nullable().describe('what was decided about the duty to notify last; null: nothing yet'),
  })
  .meta({ id: 'HoldListItem' });
export type HoldListItem = z.output<typeof HoldListItem>;
export const HoldPage = page('HoldPage', HoldListItem);
export type HoldPage = z.output<typeof HoldPage>;

const Scope = z
  .object({
    ...said,
    minShare: z.number(),
    zone: z.string().nullable(),
    from: Instant.nullable(),
    until: Instant.nullable(),
    reason: z.string().nullable(),
  })
  .describe('how far it reaches, and why it was narrowed');

export const HoldView = z
  .object({
    ...said,
    on: HeldThing,
    kind: z.string(),
    reason: z.string(),
    scopes: z.array(Scope).describe('the first as placed, the last as it is; none: it was never bounded'),
    zones: z.array(z.string()).describe('to which it can be narrowed'),
    ended,
    figures: z.object({
      reached: z.number(),
      below: z.number(),
      disposed: z.number(),
      open: z.number(),
      lookedAt: z.number(),
      found: z.number(),
      repaired: z.number(),
      cleared: z.number(),
      notReachable: z.number(),
      left: z.number().describe('of those reached, that have left the place of manufacture'),
      atHold: z.number(),
      states: z.array(z.object({ state: z.string(), hulls: z.number() })),
    }),
    recomputing,
  })
  .meta({ id: 'HoldView' });
export type HoldView = z.output<typeof HoldView>;

export const HeldHullsQuery = PageQuery.extend({
  which: z
    .enum(['all', 'open', 'disposed', 'out'])
    .default('all')
    .describe('out: on the list as placed, reached no more'),
});
export type HeldHullsQuery = z.output<typeof HeldHullsQuery>;

/** A hull, or a part that is in none, that a hold reaches or reached. */
export const HeldHull = z
  .object({
    hull: z.string().nullable(),
    hin: z.string().nullable(),
    part: z.string().nullable().describe('of what is in no hull'),
    model: z.string(),
    state: z.enum(HULL_STATES),
    dealer: z.string().nullable(),
    leftAt: Instant.nullable().describe('when it left the place of manufacture first; null: never'),
    reached: z.boolean().describe('false: narrowed out, or corrected since'),
    kg: z.number().nullable(),
    share: z.number().nullable().describe('largest share of a layer, within the scope; null: no share is known of it'),
    possibly: z.boolean(),
    atHold: z.object({ share: z.number().nullable(), state: z.string() }).nullable().describe('null: it came since'),
    disposed: z.boolean(),
    said: z.array(
      z.object({
        ...said,
        what: z.enum(HULL_DISPOSITIONS),
        doneBy: z.array(z.string()),
        note: z.string().nullable(),
        evidence: z.string().nullable(),
      }),
    ),
  })
  .meta({ id: 'HeldHull' });
export type HeldHull = z.output<typeof HeldHull>;
export const HeldHullPage = page('HeldHullPage', HeldHull).extend({ recomputing }).meta({ id: 'HeldHullPage' });
export type HeldHullPage = z.output<typeof HeldHullPage>;
