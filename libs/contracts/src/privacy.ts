import { z } from 'zod';
import { Code, Day, Envelope, Instant, page, PageQuery, receipt, Text } from './envelope.js';
import { OwnerDetail } from './owners.js';

const NoNames = Text.describe('no personal data here: it is kept in the journal for good');

export const OWNER_REQUESTS = ['access', 'correction', 'erasure'] as const;

/** That a person asked for something about the own data, and when. */
export const RecordOwnerRequest = Envelope.extend({ asked: z.enum(OWNER_REQUESTS), askedOn: Day }).meta({
  id: 'RecordOwnerRequest',
});
export type RecordOwnerRequest = z.output<typeof RecordOwnerRequest>;
export const OwnerRequestReceipt = receipt('OwnerRequestReceipt', z.object({ answerBy: Day }));

/** Sets the personal data of an owner right; all of it is given, as it shall be. */
export const CorrectOwner = Envelope.extend({ owner: OwnerDetail, reason: NoNames }).meta({ id: 'CorrectOwner' });
export type CorrectOwner = z.output<typeof CorrectOwner>;
export const OwnerCorrectedReceipt = receipt('OwnerCorrectedReceipt', z.object({ corrected: z.literal(true) }));

export const PlaceLegalHold = Envelope.extend({ reason: NoNames }).meta({ id: 'PlaceLegalHold' });
export type PlaceLegalHold = z.output<typeof PlaceLegalHold>;
export const LegalHoldReceipt = receipt('LegalHoldReceipt', z.object({ placed: z.literal(true) }));

export const EndLegalHold = Envelope.extend({ reason: NoNames }).meta({ id: 'EndLegalHold' });
export type EndLegalHold = z.output<typeof EndLegalHold>;
export const LegalHoldEndedReceipt = receipt('LegalHoldEndedReceipt', z.object({ ended: z.literal(true) }));

export const OWNER_STATES = ['kept', 'narrowed', 'erased'] as const;

const OwnerLine = z.object({
  id: z.uuid(),
  hull: z.string(),
  what: z.string(),
  since: Instant,
  state: z.enum(OWNER_STATES),
  name: z.string().nullable().describe('null: narrowed or erased'),
  keptUntil: Day.nullable().describe('the record of the hull is kept at least until then; null: nothing asks for it'),
  legalHolds: z.number().int().describe('legal holds on the data of the hull that have not ended'),
});

export const OwnersPage = page('OwnersPage', OwnerLine.meta({ id: 'OwnerLine' }));
export type OwnersPage = z.output<typeof OwnersPage>;
export type OwnerLine = OwnersPage['items'][number];

/** Names are not searched for: an address is kept in logs on its way. */
export const ListAllOwnersQuery = PageQuery.extend({ hull: Code.optional() });
export type ListAllOwnersQuery = z.output<typeof ListAllOwnersQuery>;

/** All that is on record of one person: what is given to the person who asks for it. */
export const OwnerFile = OwnerLine.extend({
  detail: OwnerDetail.nullable().describe('null: erased'),
  model: z.string(),
  changes: z.array(z.object({ what: z.string(), erased: z.array(z.string()), at: Instant, reason: z.string() })),
  requests: z.array(z.object({ asked: z.enum(OWNER_REQUESTS), askedOn: Day, answerBy: Day })),
  claims: z.array(z.object({ mark: z.string(), kind: z.string(), reportedOn: Day, symptoms: z.string() })),
  notices: z.array(z.object({ notice: z.string(), class: z.string(), mailedAt: Instant, returned: z.boolean() })),
  holds: z.array(z.object({ id: z.uuid(), reason: z.string(), since: Instant })),
  keptBecause: z.string().nullable(),
  stays: z.array(z.string()).describe('what an erasure does not reach, and why'),
}).meta({ id: 'OwnerFile' });
export type OwnerFile = z.output<typeof OwnerFile>;
