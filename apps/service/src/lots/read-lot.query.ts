import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { readAsOne } from '../platform/database/read-as-one.js';
import type { LotView } from '@hull-record/contracts';
import { resolveComposition } from '@hull-record/genealogy';
import { loadUpstream } from '../platform/composition/load-upstream.js';
import { standing } from '../platform/facts/standing.js';
import { bookKg, lostKg, measuredDifferenceKg, takenKg } from '../platform/lots/book-kg.js';
import { uuidOrNull } from '../platform/lookups/uuid-or-null.js';
import { recomputingLot } from '../platform/recompute/recomputing.js';
import { loadReadings, NOW } from '../platform/views/making.js';
import { toReadingView } from '../platform/views/to-view.js';
import { loadVerdicts, verdictsOf } from '../platform/views/verdicts.js';
import { NotThere } from '../platform/refusals.js';
import { LOT_COLUMNS, LOT_TABLES } from './lot-columns.js';

const READ = `
  select ${LOT_COLUMNS}, l.certificate, l.certified, t.code as tank,
    coalesce((select json_agg(json_build_object('id', i.id, 'lot', x.code, 'lotId', i.input_id,
        'amount', json_build_object('quantity', i.quantity::text, 'unit', i.unit, 'basis', i.basis, 'kg', i.kg)) order by x.code, i.id)
      from fact.lot_input i join fact.lot x on x.root = i.input_id and ${standing('x')}
      where i.lot_id = l.root and ${standing('i')}), '[]') as inputs,
    coalesce((select json_agg(json_build_object('state', s.state, 'reason', s.reason, 'happenedAt', s.happened_at) order by s.happened_at, s.recorded_at, s.id)
      from fact.lot_state s where s.lot_id = l.root and ${standing('s')}), '[]') as states,
    ${takenKg('l.root')} as "usedKg", coalesce(${measuredDifferenceKg('l.root')}, 0) as "adjustedKg",
    ${lostKg('l.root')} as "lostKg", ${bookKg('l.root')} as "leftKg"
  from ${LOT_TABLES}
  where (l.code = $1 or l.root = ${uuidOrNull('$1::text')}) and ${standing('l')} order by l.recorded_at limit 1`;

/** One lot, by code or id, with what it is made of. */
@Injectable()
export class ReadLot {
  constructor(private readonly db: DataSource) {}

  run(lot: string): Promise<LotView> {
    return readAsOne(this.db, (tx) => this.read(tx, lot));
  }

  private async read(tx: EntityManager, lot: string): Promise<LotView> {
    const [found] = await tx.query<LotView[]>(READ, [lot]);
    if (!found) throw new NotThere('lot', lot);
    const graph = await loadUpstream(tx, [found.id]);
    const portions = resolveComposition(found.id, graph);
    const codes = await codesOf(
      tx,
      portions.flatMap(({ source }) => source ?? []),
    );
    const composition = portions.map(({ source, role, fraction }) => ({
      source: source === null ? null : (codes.get(source) ?? source),
      role,
      fraction,
    }));
    const readings = (await loadReadings(tx, [found.id], NOW)).map(toReadingView);
    const verdicts = verdictsOf(await loadVerdicts(tx, [found.id], NOW), found.id);
    return { ...found, composition, recomputing: await recomputingLot(tx, found.id), verdicts, readings };
  }
}

const codesOf = async (tx: EntityManager, ids: readonly string[]): Promise<ReadonlyMap<string, string>> => {
  const rows = await tx.query<{ root: string; code: string }[]>(
    `select l.root, l.code from fact.lot l where l.root = any($1) and ${standing('l')}`,
    [ids],
  );
  return new Map(rows.map((row) => [row.root, row.code]));
};
