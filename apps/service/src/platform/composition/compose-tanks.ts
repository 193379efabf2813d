import type { EntityManager } from 'typeorm';
import { inputsFirst, resolveComposition, type LotNode } from '@hull-record/genealogy';
import { basisOf } from './basis.js';
import { loadUpstream } from './load-upstream.js';

const NEXT_VERSION = `
  insert into derived.composed_lot (lot_id, version, entry_id) values ($1, 1, $2)
  on conflict (lot_id) do update set version = derived.composed_lot.version + 1, entry_id = excluded.entry_id
  returning version`;

const KEEP = `
  insert into derived.lot_composition (lot_id, version, source_id, role, fraction, basis)
  select $1, $2, * from unnest($3::uuid[], $4::text[], $5::float8[], $6::text[])`;

/**
 * Works out and keeps what tank lots are made of, as a new version each. Assumes well-mixed tanks.
 *
 * @param lots tank lots; one that was withdrawn is no longer kept, the others are worked out in order, each from the kept composition of those it is made of, as when they were filled
 * @param entry the journal entry because of which it is done
 */
export const composeTanks = async (tx: EntityManager, lots: readonly string[], entry: string): Promise<void> => {
  if (lots.length === 0) return;
  const graph = await loadUpstream(tx, lots, lots);
  await tx.query('delete from derived.composed_lot where lot_id = any($1)', [lots.filter((lot) => !graph.has(lot))]);
  const wanted = new Set(lots.filter((lot) => graph.has(lot)));
  const order = inputsFirst(lots, (lot) => graph.get(lot)?.inputs.map((input) => input.lot) ?? []);
  for (const lot of order.filter((id) => wanted.has(id))) {
    const composition = resolveComposition(lot, graph);
    graph.set(lot, { ...(graph.get(lot) as LotNode), known: composition });
    const [{ version }] = (await tx.query(NEXT_VERSION, [lot, entry])) as [{ version: number }];
    const column = <T>(of: (portion: (typeof composition)[number]) => T): T[] => composition.map(of);
    await tx.query(KEEP, [
      lot,
      version,
      column(({ source }) => source),
      column(({ role }) => role),
      column(({ fraction }) => fraction),
      column(({ weakness }) => basisOf(weakness ?? 0)),
    ]);
  }
};
