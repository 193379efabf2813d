import type { RedactText } from '@hull-record/contracts';
import { claimMark } from '../platform/claims/claim.sql.js';
import { standing } from '../platform/facts/standing.js';
import { defectMark, repairMark } from '../platform/marks/marks.js';
import type { FreeText } from '../platform/texts/free-texts.js';

type Kind = RedactText['kind'];

/** A kind of freely written text: where it stands, and of which hull. */
export interface KindOfText extends FreeText {
  /** SQL of its hull, null where it is of none; the fact is `x`. */
  readonly hull: string;
  /** SQL of what tells it from others of the hull. */
  readonly mark: string;
}

const ofClaim = (sql: string): string => `(select ${sql} from fact.claim c where c.id = x.claim_id)`;
const HULL_OF_PART = (part: string): string =>
  `(select j.hull_id from fact.joint j where j.part_id = ${part} and ${standing('j')} limit 1)`;
const OF_DEFECT = `(select ${defectMark('d')} || ' of ' || p.number from fact.defect d join fact.part p on p.id = d.part_id
  where d.id = x.defect_id)`;
const OF_REPAIR = `(select ${repairMark('r')} || ' of ' || p.number from fact.repair r join fact.part p on p.id = r.part_id
  where r.id = x.repair_id)`;

export const KINDS: Readonly<Record<Kind, KindOfText>> = {
  claim: { table: 'claim', field: 'symptoms', hull: 'x.hull_id', mark: claimMark('x') },
  'claim decision': {
    ...{ table: 'claim_decision', field: 'reason' },
    ...{ hull: ofClaim('c.hull_id'), mark: ofClaim(claimMark('c')) },
  },
  'claim mark': {
    ...{ table: 'claim_mark', field: 'reason' },
    ...{ hull: ofClaim('c.hull_id'), mark: ofClaim(claimMark('c')) },
  },
  defect: {
    ...{ table: 'defect', field: 'note', hull: HULL_OF_PART('x.part_id') },
    mark: `${defectMark('x')} || ' of ' || (select p.number from fact.part p where p.id = x.part_id)`,
  },
  repair: {
    ...{ table: 'repair', field: 'note', hull: HULL_OF_PART('x.part_id') },
    mark: `${repairMark('x')} || ' of ' || (select p.number from fact.part p where p.id = x.part_id)`,
  },
  // What the service notes of itself when a hull is started is no text of anybody.
  'life fact': {
    ...{ table: 'life_fact', field: 'note', mark: 'x.what' },
    hull: `case when x.what <> 'part started' then x.hull_id end`,
  },
};

/** Where photos are, each with SQL of its hull and of what it is of; the photo is `x`. */
export const PHOTOS: readonly { readonly table: string; readonly hull: string; readonly mark: string }[] = [
  {
    table: 'photo',
    hull: HULL_OF_PART('(select d.part_id from fact.defect d where d.id = x.defect_id)'),
    mark: OF_DEFECT,
  },
  { table: 'claim_photo', hull: ofClaim('c.hull_id'), mark: `${ofClaim(claimMark('c'))} || ', ' || x.shows` },
  {
    table: 'repair_photo',
    hull: HULL_OF_PART('(select r.part_id from fact.repair r where r.id = x.repair_id)'),
    mark: `${OF_REPAIR} || ', ' || x.shows`,
  },
  { table: 'lot_photo', hull: 'null::uuid', mark: `(select l.code from fact.lot l where l.id = x.lot_id)` },
];
