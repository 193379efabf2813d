import { Injectable } from '@nestjs/common';
import type { OwnRepair, OwnRepairs as View } from '@hull-record/contracts';
import { DataSource, type EntityManager } from 'typeorm';
import { readAsOne } from '../platform/database/read-as-one.js';
import { type FoundOwnHull, findOwnHull } from '../platform/life/find-own-hull.js';
import { partsOfHull } from '../platform/lookups/find-part-of-hull.js';
import { loadDefects, loadRepairs, type RepairRow } from '../platform/views/faults.js';
import { loadParts, NOW } from '../platform/views/making.js';

/** Outside repairs of a hull of the dealer who asks, with what quality said, and what one can be reported of. */
@Injectable()
export class OwnRepairs {
  constructor(private readonly db: DataSource) {}

  /** @throws NotThere */
  run(number: string): Promise<View> {
    return readAsOne(this.db, async (tx) => read(tx, await findOwnHull(tx, number)));
  }
}

const read = async (tx: EntityManager, { hullId, dealerId }: FoundOwnHull): Promise<View> => {
  const ids = (await partsOfHull(tx, hullId)).map(({ id }) => id);
  const parts = await loadParts(tx, ids, NOW);
  const numbers = new Map(parts.map((part) => [part.id, part.number]));
  const rows = await loadRepairs(tx, ids, NOW);
  const defects = await loadDefects(tx, { parts: ids }, NOW);
  return {
    repairs: rows
      .flatMap((row) => (row.outside === null ? [] : [toOwn(row, numbers.get(row.part_id) ?? '', dealerId)]))
      .sort((a, b) => b.reportedAt.localeCompare(a.reportedAt)),
    parts: parts.map(({ number, kind, skin }) => ({ number, kind, skin: skin as View['parts'][number]['skin'] })),
    openDefects: defects.flatMap(({ id, mark, part, kind, place, zone, state }) =>
      state === 'open' || state === 'repair to be accepted' ? [{ id, mark, part, kind, place, zone, state }] : [],
    ),
  };
};

/** What another told of it freely may hold a name, and so may a picture: they are left out, as on the dealer's paper. */
const toOwn = (row: RepairRow, part: string, dealerId: string): OwnRepair => {
  const own = row.dealer_id === dealerId;
  const { at = '', toldBy = null, when = null, material = null, evidence = null } = row.outside ?? {};
  return {
    ...{ id: row.id, mark: row.mark, part, own, defects: row.defects, procedure: row.procedure },
    ...{ taperRatio: row.taper_ratio, grindOutMm: row.grind_out_mm, plies: row.plies, at, when, material },
    ...(own ? { toldBy, evidence, note: row.note } : { toldBy: null, evidence: null, note: null }),
    state: stateOf(row),
    photos: own ? row.photos.map(({ id, shows, redactedOn }) => ({ id, shows, redactedOn })) : [],
    reportedAt: row.happened_at.toISOString(),
  };
};

const stateOf = ({ accepted, re_inspections }: RepairRow): OwnRepair['state'] => {
  if (re_inspections.at(-1)?.passed === false) return 'failed when inspected again';
  if (accepted === null) return 'to be judged';
  return accepted ? 'accepted' : 'refused';
};
