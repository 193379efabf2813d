import { canonicalJson, commitment } from '@hull-record/evidence';
import type { EntityManager } from 'typeorm';
import { COMMITMENT, FREE_TEXTS, isCommitment } from '../platform/texts/free-texts.js';
import { fault, type TamperFault } from './fault.js';

/** What lies apart from the record, compared with the commitments to it. */
export interface CheckedApart {
  readonly faults: readonly TamperFault[];
  /** What is gone by recorded acts: personal data of owners, and texts. */
  readonly erased: { readonly owners: number; readonly texts: number };
}

interface Committed {
  readonly id: string;
  readonly commitments: readonly string[];
  readonly value: unknown;
  readonly salt: string | null;
}

/** Values that lie apart against the commitments to them; one that is gone without a recorded act is a fault. */
export const checkApart = async (tx: EntityManager): Promise<CheckedApart> => {
  const owners = await checkOwners(tx);
  const texts = await checkTexts(tx);
  return {
    faults: [...(await checkNames(tx)), ...owners.faults, ...texts.faults],
    erased: { owners: owners.erased, texts: texts.erased },
  };
};

const NAMES = `
  select p.root as id, array_agg(p.name_commitment) as commitments, d.name as value, d.salt
  from fact.person p left join work.person_detail d on d.person_id = p.root group by p.root, d.name, d.salt order by p.root`;

/** Names of people, of which none is erased by any act. */
const checkNames = async (tx: EntityManager): Promise<readonly TamperFault[]> =>
  (await tx.query<Committed[]>(NAMES)).flatMap((row) => ofErased('work.person_detail', row, false, String(row.value)));

const OWNERS = `
  select o.root as id, d.detail as value, d.salt, exists (select from fact.owner_erased e where e.owner_id = o.root) as erased,
    array(select v.commitment from fact.owner v where v.root = o.root
      union all select c.commitment from fact.owner_changed c where c.owner_id = o.root) as commitments
  from fact.owner o left join work.owner_detail d on d.owner_id = o.root where o.root = o.id
  union all
  select d.owner_id, d.detail, d.salt, false, '{}' from work.owner_detail d
  where not exists (select from fact.owner o where o.root = d.owner_id) order by 1`;

interface Checked {
  readonly faults: readonly TamperFault[];
  readonly erased: number;
}

const checkOwners = async (tx: EntityManager): Promise<Checked> => {
  const rows = await tx.query<(Committed & { erased: boolean })[]>(OWNERS);
  const faults = rows.flatMap((row) => ofErased('work.owner_detail', row, row.erased, canonicalJson(row.value)));
  return { faults, erased: rows.filter(({ erased }) => erased).length };
};

/** Every text that a fact has a commitment to, and every text that none has. */
const TEXTS = `
  with told as (${FREE_TEXTS.map(
    ({ table, field }) => `select v.${field} as commitment, exists (select from fact.text_redacted r
      where r.of_root = v.root and r.field = '${field}' and r.original = 'erased') as erased
    from fact.${table} v where ${isCommitment(`v.${field}`)}`,
  ).join(' union ')})
  select t.commitment as id, array[substr(t.commitment, ${COMMITMENT.length + 1})] as commitments, k.value, k.salt, t.erased
  from told t left join work.free_text k on k.commitment = t.commitment
  union all
  select k.commitment, '{}', k.value, k.salt, false from work.free_text k
  where not exists (select from told t where t.commitment = k.commitment) order by 1`;

const checkTexts = async (tx: EntityManager): Promise<Checked> => {
  const rows = await tx.query<(Committed & { erased: boolean })[]>(TEXTS);
  const faults = rows.flatMap((row) => ofErased('work.free_text', row, row.erased, row.value as string));
  return { faults, erased: rows.filter(({ erased }) => erased).length };
};

const ofErased = (table: string, row: Committed, erased: boolean, value: string): readonly TamperFault[] => {
  const { salt } = row;
  if (salt === null)
    return erased ? [] : [fault('removed', table, row.id, 'no recorded act erased it, and it is gone.')];
  if (erased) return [fault('added', table, row.id, 'a recorded act erased it, and it is there.')];
  if (row.commitments.length === 0) return [fault('added', table, row.id, 'no fact has a commitment to it.')];
  return differs(table, { ...row, salt }, value);
};

const differs = (
  table: string,
  { id, commitments, salt }: Committed & { readonly salt: string },
  value: string,
): readonly TamperFault[] => {
  const fits = salt.length >= 22 && commitments.includes(commitment(salt, value));
  return fits ? [] : [fault('changed', table, id, 'it is not what the journal has a commitment to.')];
};
