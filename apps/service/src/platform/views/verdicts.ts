import type { EntityManager } from 'typeorm';
import type { VerdictView } from '@hull-record/contracts';
import { standing } from '../facts/standing.js';

export type VerdictRow = VerdictView & { readonly aboutId: string };

const VERDICTS = `
  select v.id, v.about_id as "aboutId", v.topic, v.verdict, v.detail, v.figures, v.rule, v.source, v.id <> v.root as corrected
  from fact.verdict v where v.about_id = any($1) and ${standing('v', '$2')} order by v.topic, v.id`;

/** Verdicts on layers, repairs or lots, as known at an instant. */
export const loadVerdicts = (tx: EntityManager, about: readonly string[], asOf: string): Promise<VerdictRow[]> =>
  tx.query(VERDICTS, [about, asOf]);

/** Those about one thing, as the API shows them. */
export const verdictsOf = (rows: readonly VerdictRow[], about: string): VerdictView[] =>
  rows.filter(({ aboutId }) => aboutId === about).map(({ aboutId: _about, ...view }) => view);
