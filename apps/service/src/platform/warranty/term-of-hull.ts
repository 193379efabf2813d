import type { ClaimTerm } from '@hull-record/contracts';
import { decodeHin, warrantyTerm, type LifeDay, type WarrantyTerms } from '@hull-record/trade';
import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';

const HULL = `
  select h.model_id as model, extract(year from h.happened_at at time zone p.time_zone)::int as "begunIn",
    (select n.as_printed from fact.hull_number n where n.hull_id = h.id and n.kind = 'HIN' order by n.recorded_at desc, n.id limit 1) as hin,
    coalesce((select json_agg(json_build_object('what', f.what, 'on', to_char(f.happened_at at time zone p.time_zone, 'YYYY-MM-DD')))
      from fact.life_fact f where f.hull_id = h.id and ${standing('f')}), '[]') as life
  from fact.hull h join fact.plant p on p.id = h.plant_id where h.id = $1`;

const TERMS = `
  select t.id, t.version, t.starts, t.covers, t.transfer, t.exclusions,
    to_char(t.happened_at at time zone p.time_zone, 'YYYY-MM-DD') as "holdsFrom"
  from fact.warranty_terms t join fact.plant p on p.id = t.plant_id
  where t.model_id = $1 and $2 between t.from_model_year and t.to_model_year and ${standing('t')} order by t.version desc`;

interface HullRow {
  readonly model: string;
  readonly begunIn: number;
  readonly hin: string | null;
  readonly life: readonly LifeDay[];
}

interface TermsRow extends WarrantyTerms {
  readonly id: string;
  readonly version: number;
  readonly exclusions: readonly string[];
  readonly holdsFrom: string;
}

/** What is claimed, and when it was reported: a day of the plant. */
export interface AskedOfTerms {
  readonly kind: string;
  readonly reportedOn: string;
}

/**
 * What the warranty terms say of a claim. The newest version that held when the warranty of the boat began; before any
 * did, the first one. Data for a person, who decides.
 */
export const termOfHull = async (tx: EntityManager, hullId: string, asked: AskedOfTerms): Promise<ClaimTerm> => {
  const [hull] = (await tx.query<HullRow[]>(HULL, [hullId])) as [HullRow];
  const { year, says } = modelYearOf(hull);
  const versions = await tx.query<TermsRow[]>(TERMS, [hull.model, year]);
  const said = versions.map((terms) => ({ terms, term: warrantyTerm(terms, hull.life, asked) }));
  const held = said.find(({ terms, term }) => term.startsOn !== null && terms.holdsFrom <= term.startsOn);
  const chosen = held ?? said.at(-1);
  if (!chosen) return { ...NONE, modelYear: year, says: [...says, 'There are no warranty terms for this model year.'] };
  const late =
    held || chosen.term.startsOn === null ? [] : ['No version is as old as its warranty: the first is taken.'];
  const { id, version, exclusions } = chosen.terms;
  return {
    ...chosen.term,
    ...{ terms: { id, version }, modelYear: year, exclusions: [...exclusions] },
    says: [...says, ...late, ...chosen.term.says],
  };
};

const NONE: Omit<ClaimTerm, 'modelYear' | 'says'> = {
  ...{ within: null, startsOn: null, startsWith: null, endsOn: null, year: null },
  ...{ bearsPercent: null, terms: null, exclusions: [] },
};

const modelYearOf = ({ hin, begunIn }: HullRow): { readonly year: number; readonly says: readonly string[] } => {
  const read = hin === null ? undefined : decodeHin(hin);
  if (read?.valid && read.modelYear !== undefined) return { year: read.modelYear, says: [] };
  return { year: begunIn, says: ['The HIN tells no model year: the year in which it was begun is taken.'] };
};
