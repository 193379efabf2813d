import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { ContainerView, StoreOfLot } from '@hull-record/contracts';
import { redactedOn } from '../platform/photos/shown-of.sql.js';
import { standing } from '../platform/facts/standing.js';
import { uuidOrNull } from '../platform/lookups/uuid-or-null.js';
import { NotThere } from '../platform/refusals.js';
import { CONTAINERS } from '../platform/store/containers.sql.js';

const amount = (x: string): string =>
  `json_build_object('quantity', ${x}.quantity::text, 'unit', ${x}.unit, 'kg', ${x}.kg)`;
const label = (x: string): string => `(select c.label from fact.container c where c.id = ${x}.container_id)`;
const list = (of: string, table: string): string =>
  `coalesce((select json_agg(json_build_object('id', x.id, 'happenedAt', x.happened_at, ${of}) order by x.happened_at, x.id)
    from fact.${table} x where x.lot_id = l.root and ${standing('x')}), '[]')`;

const READ = `
  select l.root as id, l.code as lot,
    ${list(`'what', x.what, 'reason', x.reason, 'place', x.place, 'container', ${label('x')}, 'amount', ${amount('x')}`, 'lot_loss')} as losses,
    ${list(`'note', x.note, 'container', ${label('x')}, 'amount', ${amount('x')}`, 'lot_count')} as counts,
    ${list(`'expiresOn', x.expires_on::text, 'result', x.result, 'certificate', x.certificate`, 'lot_retest')} as retests,
    ${list(`'originalSha256', x.original_sha256, 'redactedOn', ${redactedOn('x')}`, 'lot_photo')} as photos,
    ${list(
      `'kind', x.kind, 'reason', x.reason, 'container', ${label('x')}, 'lifted', (
      select json_build_object('id', f.id, 'reason', f.reason, 'happenedAt', f.happened_at) from fact.hold_lift f
      where f.hold_id = x.root and ${standing('f')} limit 1)`,
      'hold',
    )} as holds
  from fact.lot l where (l.code = $1 or l.root = ${uuidOrNull('$1::text')}) and ${standing('l')} order by l.recorded_at limit 1`;

/** What the store knows of a lot: containers, holds, losses, counts, retests, photos of its certificate. */
@Injectable()
export class ReadStoreOfLot {
  constructor(private readonly db: DataSource) {}

  async run(lot: string): Promise<StoreOfLot> {
    const [found] = await this.db.query<Omit<StoreOfLot, 'containers'>[]>(READ, [lot]);
    if (!found) throw new NotThere('lot', lot);
    const containers = await this.db.query<ContainerView[]>(CONTAINERS('c.lot_id = $1'), [found.id]);
    return { ...found, containers };
  }
}
