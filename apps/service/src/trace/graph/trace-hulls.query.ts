import { Injectable } from '@nestjs/common';
import type { HullTraceQuery, TraceGraph, TraceNode } from '@hull-record/contracts';
import { FLOOR, massesUpstream } from '@hull-record/genealogy';
import { weakestBasis, type Basis } from '@hull-record/trade';
import { DataSource, type EntityManager } from 'typeorm';
import { readAsOne } from '../../platform/database/read-as-one.js';
import { standing } from '../../platform/facts/standing.js';
import { whereabouts } from '../../platform/life/whereabouts.js';
import { findHulls } from '../../platform/lookups/find-hull.js';
import { recomputingParts } from '../../platform/recompute/recomputing.js';
import { InvalidRequest, NotThere } from '../../platform/refusals.js';
import { describeLots } from '../describe-lots.js';
import { loadAllUpstream } from '../load-all-upstream.js';
import { possiblyAnyOf } from '../possibly-any-of.js';
import { sourcesInPlaces, type SourceInPlace } from '../sources-in-places.js';
import { ASSUMES } from './assumes.js';
import { addKg, cutFlows, sumWays, type Flows } from './flow.js';
import { lotNode, ownerNode } from './to-nodes.js';
import { usedOnHulls, type UsedOnOwner } from './used-of-lots.js';

/** So many hulls one picture begins with at most. */
const HULLS_AT_MOST = 20;

/** Where what is in hulls came from: what was used on them, and the received lots behind it. */
@Injectable()
export class TraceHulls {
  constructor(private readonly db: DataSource) {}

  run(number: string, query: HullTraceQuery): Promise<TraceGraph> {
    return readAsOne(this.db, (tx) => this.read(tx, number, query));
  }

  /** @throws NotThere, InvalidRequest */
  async read(tx: EntityManager, number: string, query: HullTraceQuery): Promise<TraceGraph> {
    const hulls = await hullsOf(tx, number, query.also);
    const used = await usedOnHulls(tx, [...hulls.keys()]);
    const flows = cutFlows(await flowsOf(tx, [...hulls.keys()], used), new Set(hulls.keys()), query.nodes);
    const parts = await partsOf(tx, [...hulls.keys()]);
    const owners = [...flows.owners].map(([id, kg]) =>
      ownerNode(id, 'hull', hulls.get(id)?.code ?? id, kg, {
        hin: hulls.get(id)?.hin ?? null,
        now: hulls.get(id)?.now ?? null,
      }),
    );
    return {
      of: 'hulls',
      codes: [...hulls.values()].map(({ code }) => code),
      nodes: [...owners, ...(await lotsOf(tx, flows.lots, parts))],
      links: [...flows.ways],
      leftOut: flows.leftOut,
      assumes: ASSUMES,
      recomputing: await recomputingParts(tx, parts),
    };
  }
}

interface Hull {
  readonly id: string;
  readonly code: string;
  readonly hin: string | null;
  readonly now: TraceNode['now'];
}

const HULLS = `
  select n.hull_id as id, n.as_printed as code, ${whereabouts('n.hull_id')} as now,
    (select x.as_printed from fact.hull_number x where x.hull_id = n.hull_id and x.kind = 'HIN' order by x.recorded_at desc, x.id limit 1) as hin
  from fact.hull_number n where n.hull_id = any($1) and n.kind = 'hull number' order by n.normalised`;

const hullsOf = async (tx: EntityManager, number: string, also = ''): Promise<ReadonlyMap<string, Hull>> => {
  const others = also
    .split(',')
    .map((each) => each.trim())
    .filter((each) => each !== '');
  if (others.length >= HULLS_AT_MOST)
    throw new InvalidRequest([{ pointer: '/also', detail: `names more than ${HULLS_AT_MOST - 1} hulls: name fewer` }]);
  const found = await findHulls(tx, [number, ...others]);
  if (!found.has(number)) throw new NotThere('hull', number);
  const missing = others.filter((each) => !found.has(each));
  if (missing.length > 0)
    throw new InvalidRequest(missing.map((each) => ({ pointer: '/also', detail: `There is no hull ${each}.` })));
  const rows = await tx.query<Hull[]>(HULLS, [[...new Set(found.values())]]);
  return new Map(rows.map((row) => [row.id, row]));
};

const partsOf = async (tx: EntityManager, hulls: readonly string[]): Promise<readonly string[]> => {
  const rows = await tx.query<{ part_id: string }[]>(
    `select j.part_id from fact.joint j where j.hull_id = any($1) and ${standing('j')}`,
    [hulls],
  );
  return rows.map((row) => row.part_id);
};

/** Kilograms in the hulls, on every way by which they came; what is under the floor of all of it is left out. */
const flowsOf = async (tx: EntityManager, hulls: readonly string[], used: readonly UsedOnOwner[]): Promise<Flows> => {
  const [given, owners] = [new Map<string, number>(), new Map(hulls.map((id) => [id, 0]))];
  for (const { lot, owner, kg } of used) {
    addKg(given, lot, kg);
    addKg(owners, owner, kg);
  }
  const { masses, steps } = massesUpstream(given, (await loadAllUpstream(tx, [...given.keys()])).graph);
  const least = FLOOR * [...owners.values()].reduce((sum, kg) => sum + kg, 0);
  const lots = new Map([...masses].filter(([, kg]) => kg >= least));
  const ways = [
    ...steps.map((step) => ({ from: step.input, to: step.lot, kg: step.kg })),
    ...used.map(({ lot, owner, kg }) => ({ from: lot, to: owner, kg })),
  ];
  return { lots, owners, ways: sumWays(ways) };
};

const lotsOf = async (
  tx: EntityManager,
  lots: ReadonlyMap<string, number>,
  parts: readonly string[],
): Promise<readonly TraceNode[]> => {
  const ids = [...lots.keys()];
  const described = await describeLots(tx, ids);
  const possibly = await possiblyAnyOf(tx, ids);
  const found = new Map<string, SourceInPlace[]>();
  for (const row of await sourcesInPlaces(tx, { parts }))
    found.set(row.source_id, [...(found.get(row.source_id) ?? []), row]);
  return [...lots].map(([id, kg]) =>
    lotNode(id, kg, described.get(id), { ...inPlaces(found.get(id) ?? []), possiblyAnyOf: possibly.get(id) ?? null }),
  );
};

const inPlaces = (rows: readonly SourceInPlace[]): Pick<TraceNode, 'share' | 'basis'> =>
  rows.length === 0
    ? { share: null, basis: null }
    : {
        share: Math.max(...rows.map((row) => row.share)),
        basis: weakestBasis(rows.map((row) => row.basis as Basis)),
      };
