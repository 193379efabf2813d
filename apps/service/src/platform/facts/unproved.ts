import type { Fact } from './fact.js';
import { standing } from './standing.js';
import { UnprovedEntryEntity } from './unproved-entry.entity.js';

/** Nonconformity that an entry leaves which nobody proved to be theirs. */
export const UNPROVED = 'identity-not-proved';

/** The parts that an entry is about, by the rows that it wrote. */
const PARTS = `
  select distinct coalesce(r.part_id, j.part_id, rp.part_id) as part_id from unnest($1::uuid[]) of_id
  left join fact.layer_record r on r.id = of_id or r.root = of_id
  left join fact.joint j on j.root = of_id
  left join fact.repair rp on rp.root = of_id or rp.id = of_id
  where coalesce(r.part_id, j.part_id, rp.part_id) is not null`;

/**
 * Keeps that an entry came in the name of somebody who gave no PIN: it is confirmed or refused by that person, and
 * until then it stands in the way of release.
 */
export const markUnproved = async (fact: Fact): Promise<void> => {
  if (!fact.author.unproved) return;
  const { badge, personId } = fact.author;
  const parts = await partsOf(fact);
  const about = await fact.insert(UnprovedEntryEntity, { personId });
  const detail = `Entered as ${badge}, who gave no PIN on that device: ${badge} has to confirm it.`;
  for (const partId of parts.length > 0 ? parts : [null]) {
    await fact.open({ rule: UNPROVED, detail, aboutKind: 'entry', aboutId: about, partId });
  }
};

const partsOf = async (fact: Fact): Promise<readonly string[]> => {
  const values = fact.rows.map((row) => row.values);
  const direct = values.flatMap((row) => (typeof row['part_id'] === 'string' ? [row['part_id']] : []));
  const about = values.flatMap((row) =>
    ['of_id', 'into_id', 'layer_record_id', 'repair_id'].flatMap((name) =>
      typeof row[name] === 'string' ? [row[name]] : [],
    ),
  );
  const found = about.length === 0 ? [] : await fact.tx.query<{ part_id: string }[]>(PARTS, [about]);
  return [...new Set([...direct, ...found.map(({ part_id }) => part_id)])].sort();
};

/** SQL: an entry that has not been confirmed by who is said to have made it; as recorded by an instant, or ever. */
export const isUnproved = (entry: string, asOf?: string): string => `exists (
  select from fact.unproved_entry ue where ue.entry_id = ${entry} and ${standing('ue', asOf)} and not exists (
    select from fact.entry_confirmation ec where ec.unproved_entry_id = ue.id and ec.confirmed and ${standing('ec', asOf)}))`;

/** SQL: the same, by what had happened at a time. */
export const wasUnproved = (entry: string, at: string): string => `exists (
  select from fact.unproved_entry ue where ue.entry_id = ${entry} and ${standing('ue')} and not exists (
    select from fact.entry_confirmation ec where ec.unproved_entry_id = ue.id and ec.confirmed and ec.happened_at <= ${at} and ${standing('ec')}))`;

/** SQL: who is said to have made an entry had said by a time that it was not theirs. */
export const wasRefused = (entry: string, at: string): string => `exists (
  select from fact.unproved_entry ue join fact.entry_confirmation ec on ec.unproved_entry_id = ue.id
  where ue.entry_id = ${entry} and not ec.confirmed and ec.happened_at <= ${at} and ${standing('ec')})`;

/** SQL: how far is known who made an entry: by its journal, or `provisional` or `refused` while it is not proved. */
export const identityOf = (entry: string, kept: string, asOf?: string): string => `case
  when not ${isUnproved(entry, asOf)} then case when exists (select from fact.unproved_entry ue where ue.entry_id = ${entry}) then 'proved' else ${kept} end
  when exists (select from fact.unproved_entry ue join fact.entry_confirmation ec on ec.unproved_entry_id = ue.id
    where ue.entry_id = ${entry} and not ec.confirmed and ${standing('ec', asOf)}) then 'refused'
  else 'provisional' end`;
