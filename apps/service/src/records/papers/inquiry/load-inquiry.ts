import type { EntityManager } from 'typeorm';
import type { CaseAnswer } from '@hull-record/contracts';
import { rolesAt } from '../../../platform/access/roles.sql.js';
import { findCase } from '../../../platform/cases/find-case.js';
import { standing } from '../../../platform/facts/standing.js';
import { Conflict, NotThere } from '../../../platform/refusals.js';
import { newestOf, versions } from '../../../platform/papers/newest-of.sql.js';
import type { PlantRow } from '../../../platform/papers/plant-of.js';
import type { FrozenCase } from './frozen-case.js';

/** A look at a case that is worked out, with all that its report says. */
export interface InquiryFacts {
  readonly plant: PlantRow;
  readonly newest: Date;
  readonly code: string;
  readonly title: string;
  readonly under_counsel: boolean;
  readonly look: number;
  readonly looks: number;
  readonly looked_at: Date;
  readonly version: number;
  readonly versions: number;
  readonly settings: FrozenCase;
  readonly settings_sha256: string;
  readonly reason: string;
  readonly frozen_at: Date;
  /** Roles of whoever froze the settings, then: never a person. */
  readonly frozen_by: readonly string[];
  readonly inputs_sha256: string;
  readonly answer_sha256: string;
  readonly answer: CaseAnswer;
  /** What decided claims of this kind cost, by currency. */
  readonly costs: readonly CostRow[];
}

/** Costs that were told of decided claims. */
export interface CostRow {
  readonly currency: string;
  readonly claims: number;
  readonly mean: number;
}

const LOOK = `
  select c.code, c.title, c.under_counsel, p.code as plant, p.time_zone, k.number as look, k.recorded_at as looked_at,
    (select count(*)::int from fact.case_look o where o.case_id = c.root) as looks,
    s.version, (select count(*)::int from fact.case_settings o where o.case_id = c.root) as versions,
    s.settings, s.sha256 as settings_sha256, s.reason, s.recorded_at as frozen_at,
    ${rolesAt('(select j.person_id from fact.journal j where j.id = s.entry_id)', 's.recorded_at')} as frozen_by,
    a.inputs_sha256, a.answer_sha256, a.answer
  from fact.case_file c join fact.plant p on p.id = c.plant_id
  join fact.case_look k on k.case_id = c.root join fact.case_settings s on s.id = k.settings_id
  left join fact.case_answer a on a.look_id = k.id
  where c.root = $1 and k.number::text = $2`;

const DECIDED = `
  select distinct on (d.claim_id) d.claim_id, d.cost_amount, d.cost_currency from fact.claim_decision d
  join fact.claim c on c.root = d.claim_id and ${standing('c')}
  where c.kind = $1 and ${standing('d')} order by d.claim_id, d.happened_at desc, d.id desc`;

const COSTS = `
  select d.cost_currency as currency, count(*)::int as claims, avg(d.cost_amount::numeric)::float8 as mean
  from (${DECIDED}) d where d.cost_amount is not null group by d.cost_currency order by d.cost_currency`;

/** What the report rests on: the case, everything that was done about it, and what decided claims cost. */
const NEWEST = newestOf([
  versions('case_file', 'x.root = $1'),
  versions('case_settings', 'x.case_id = $1'),
  versions('case_look', 'x.case_id = $1'),
  versions('case_answer', 'x.look_id in (select k.id from fact.case_look k where k.case_id = $1)'),
  versions('claim_decision', 'x.claim_id in (select c.root from fact.claim c where c.kind = $2)'),
  versions('claim', 'x.kind = $2'),
]);

type LookRow = Omit<InquiryFacts, 'plant' | 'newest' | 'costs' | 'answer'> & {
  readonly plant: string;
  readonly time_zone: string;
  readonly answer: CaseAnswer | null;
};

/**
 * Loads a look at a case that the person may see.
 *
 * @param tx one transaction that sees one moment
 * @throws NotThere; Conflict while the look is not worked out
 */
export const loadInquiry = async (
  tx: EntityManager,
  { code, look, personId }: { readonly code: string; readonly look: string; readonly personId: string },
): Promise<InquiryFacts> => {
  const { id } = await findCase(tx, code, personId);
  const [row] = await tx.query<LookRow[]>(LOOK, [id, look]);
  if (!row) throw new NotThere('look', look);
  const { answer, plant, time_zone, ...facts } = row;
  if (answer === null)
    throw new Conflict('not-done', 'This look is not worked out yet: ask for its report again when it is.');
  const [{ at }] = await tx.query<[{ at: Date }]>(NEWEST, [id, facts.settings.kind]);
  const costs = await tx.query<CostRow[]>(COSTS, [facts.settings.kind]);
  return { ...facts, answer, plant: { plant, time_zone }, newest: at, costs };
};
