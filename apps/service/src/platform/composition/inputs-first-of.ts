import type { EntityManager } from 'typeorm';
import { inputsFirst } from '@hull-record/genealogy';
import { standing } from '../facts/standing.js';

const AMONG = `
  select i.lot_id as lot, array_agg(i.input_id) as inputs from fact.lot_input i
  where i.lot_id = any($1) and i.input_id = any($1) and ${standing('i')} group by i.lot_id`;

/**
 * These lots, each after all of them that it is made of.
 *
 * @throws LotCycle
 */
export const inputsFirstOf = async (tx: EntityManager, lots: readonly string[]): Promise<readonly string[]> => {
  const rows = await tx.query<{ lot: string; inputs: string[] }[]>(AMONG, [lots]);
  const inputs = new Map(rows.map((row) => [row.lot, row.inputs]));
  return inputsFirst(lots, (lot) => inputs.get(lot) ?? []);
};
