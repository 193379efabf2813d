import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { ContainerView, StockItem } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { bookKg } from '../platform/lots/book-kg.js';
import { stateOrDefault } from '../platform/lots/find-lots.js';
import { NotThere } from '../platform/refusals.js';
import { expiryAt, holdsOn } from '../platform/store/holds.sql.js';
import { CONTAINERS } from '../platform/store/containers.sql.js';

const STOCK = `
  select s.* from (
    select l.code as lot, l.root as "lotId", l.supplier_lot as "supplierLot", ${expiryAt('l', 'now()')}::text as "expiresOn", l.happened_at as "receivedAt",
      ${stateOrDefault('l', 'now()')} as state, ${holdsOn('l.root', 'null::uuid', 'now()')} as holds, ${bookKg('l.root')} as "leftKg",
      ${expiryAt('l', 'now()')} < (now() at time zone p.time_zone)::date as expired
    from fact.lot l join fact.plant p on p.id = l.plant_id where l.material_id = $1 and l.origin = 'received' and ${standing('l')}) s
  where s."leftKg" > 1e-6
  order by s."expiresOn" nulls last, s."receivedAt", s.lot`;

/** Stock of a material in the order in which it is to be used: first to expire first, then first received (class rules ask for systematic, sequential use: LR Rules for Materials 2022 Ch 14 Sec 5.3.5). */
@Injectable()
export class ListStock {
  constructor(private readonly db: DataSource) {}

  async run(material: string): Promise<StockItem[]> {
    const [found] = await this.db.query<{ root: string }[]>(
      `select m.root from fact.material m where m.code = $1 and ${standing('m')}`,
      [material],
    );
    if (!found) throw new NotThere('material', material);
    const rows = await this.db.query<Omit<StockItem, 'usable' | 'containers'>[]>(STOCK, [found.root]);
    const boxes = await this.db.query<ContainerView[]>(CONTAINERS('c.lot_id = any($1)'), [
      rows.map((row) => row.lotId),
    ]);
    return rows.map((row) => ({
      ...row,
      expired: row.expired ?? false,
      usable: row.state === 'released' && row.holds.length === 0 && row.expired !== true,
      containers: boxes
        .filter((box) => box.lot === row.lot && canBeTaken(box))
        .sort(openFirst)
        .map(shown),
    }));
  }
}

const canBeTaken = ({ rejected, holds, leftKg, history }: ContainerView): boolean =>
  !rejected &&
  holds.length === 0 &&
  leftKg > 1e-6 &&
  history.findLast(({ what }) => what !== 'moved')?.what !== 'emptied';

/** Open containers first, so that none stands open longer than it need: common practice. */
const openFirst = (a: ContainerView, b: ContainerView): number =>
  Number(a.openedAt === null) - Number(b.openedAt === null);

const shown = ({ label, place, openedAt, leftKg }: ContainerView): StockItem['containers'][number] => ({
  ...{ label, place, openedAt, leftKg },
});
