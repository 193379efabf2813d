import { Injectable } from '@nestjs/common';
import type { TraceGraph, TraceNode, TraceQuery } from '@hull-record/contracts';
import { DataSource, type EntityManager } from 'typeorm';
import { readAsOne } from '../../platform/database/read-as-one.js';
import { readReachOfParts, type ReachRow } from '../../platform/reach/ask-reach.js';
import { findLot, type AskedLot } from '../../platform/reach/find-lot.js';
import { loadDownstream } from '../../platform/reach/load-downstream.js';
import { recomputingDownstream } from '../../platform/recompute/recomputing.js';
import { describeLots } from '../describe-lots.js';
import { loadAllUpstream } from '../load-all-upstream.js';
import { possiblyAnyOf } from '../possibly-any-of.js';
import { ASSUMES } from './assumes.js';
import { cutFlows, type CutFlows } from './flow.js';
import { fractionsOf, lotFlows } from './lot-flows.js';
import { lotNode, ownerNode } from './to-nodes.js';
import { usedOfLots, type UsedOnOwner } from './used-of-lots.js';

/** Where a lot went: what was made of it, and the hulls, with kilograms on each way. */
@Injectable()
export class TraceLot {
  constructor(private readonly db: DataSource) {}

  run(lot: string, query: TraceQuery): Promise<TraceGraph> {
    return readAsOne(this.db, (tx) => this.read(tx, lot, query));
  }

  /** The same within a transaction that sees one moment. */
  async read(tx: EntityManager, lot: string, { nodes: most }: TraceQuery): Promise<TraceGraph> {
    const asked = await findLot(tx, lot);
    const itself = (await describeLots(tx, [asked.id])).get(asked.id);
    const facts = {
      ...{ id: asked.id, kg: itself?.kg ?? 0 },
      downstream: await loadDownstream(tx, asked.id),
      upstream: (await loadAllUpstream(tx, [asked.id])).graph,
    };
    const fractions = fractionsOf(facts);
    const used = await usedOfLots(tx, [...fractions.keys()]);
    const flows = cutFlows(lotFlows(facts, fractions, used), new Set([asked.id]), most);
    return {
      of: 'lot',
      codes: [asked.code],
      nodes: [...(await lotsOf(tx, flows, fractions)), ...(await ownersOf(tx, asked, flows, used, most))],
      links: [...flows.ways],
      leftOut: flows.leftOut,
      assumes: ASSUMES,
      recomputing: await recomputingDownstream(tx, asked.id),
    };
  }
}

const lotsOf = async (
  tx: EntityManager,
  { lots }: CutFlows,
  fractions: ReadonlyMap<string, number>,
): Promise<readonly TraceNode[]> => {
  const ids = [...lots.keys()];
  const described = await describeLots(tx, ids);
  const possibly = await possiblyAnyOf(tx, ids);
  return [...lots].map(([id, kg]) =>
    lotNode(id, kg, described.get(id), {
      share: fractions.get(id) ?? null,
      possiblyAnyOf: possibly.get(id) ?? null,
    }),
  );
};

/** The hulls and parts with kilograms, the most first; then those that possibly hold it, as far as there is room. */
const ownersOf = async (
  tx: EntityManager,
  asked: AskedLot,
  { lots, owners }: CutFlows,
  used: readonly UsedOnOwner[],
  most: number,
): Promise<readonly TraceNode[]> => {
  const kept = used.filter(({ owner }) => owners.has(owner));
  const ownerOfPart = new Map(kept.flatMap(({ owner, parts }) => parts.map((part) => [part, owner] as const)));
  const rows = await readReachOfParts(tx, asked, [...ownerOfPart.keys()], most);
  const ids = await idsOf(tx, rows);
  const reached = rows.flatMap((row) => {
    const code = codeOf(row);
    const id = ids.get(code);
    if (id === undefined) return [];
    const kg = row.possibly ? null : (owners.get(id) ?? row.kg);
    const { largestLayerShare: share, basis, possibly, hin, now } = row;
    return [ownerNode(id, row.hull === null ? 'part' : 'hull', code, kg, { share, basis, possibly, hin, now })];
  });
  const byKg = (a: TraceNode, b: TraceNode): number => (b.kg ?? 0) - (a.kg ?? 0) || (a.code < b.code ? -1 : 1);
  return reached.sort(byKg).slice(0, most - lots.size);
};

/** The number of the hull, or of the part that is in none. */
const codeOf = ({ hull, parts }: ReachRow): string => hull ?? parts[0]?.part ?? '';

const IDS = `
  select n.as_printed as code, n.hull_id as id from fact.hull_number n where n.kind = 'hull number' and n.as_printed = any($1)
  union all
  select p.number, p.id from fact.part p where p.number = any($2)`;

const idsOf = async (tx: EntityManager, rows: readonly ReachRow[]): Promise<ReadonlyMap<string, string>> => {
  const codes = (of: (row: ReachRow) => boolean): string[] => rows.filter(of).map(codeOf);
  const found = await tx.query<{ code: string; id: string }[]>(IDS, [
    codes(({ hull }) => hull !== null),
    codes(({ hull }) => hull === null),
  ]);
  return new Map(found.map(({ code, id }) => [code, id]));
};
