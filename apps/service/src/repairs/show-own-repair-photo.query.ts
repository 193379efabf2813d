import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { shownOf } from '../platform/photos/shown-of.sql.js';
import { NotThere } from '../platform/refusals.js';
import { findOwnRepair } from './find-own-repair.js';

const FIND = `
  select ${shownOf('p')} as shown from fact.repair_photo p
  where p.id::text = lower($1) and p.repair_id = $2 and ${standing('p')}`;

/** The copy of a photo that is shown, to the dealer who reported the repair that it is of. */
@Injectable()
export class ShowOwnRepairPhoto {
  constructor(
    private readonly db: DataSource,
    private readonly store: PhotoStore,
  ) {}

  /** @throws NotThere */
  async run(number: string, repair: string, id: string): Promise<Buffer> {
    const root = await findOwnRepair(this.db.manager, number, repair);
    const [photo] = await this.db.query<{ shown: string }[]>(FIND, [id, root]);
    const shown = photo === undefined ? null : await this.store.read(photo.shown);
    if (!shown) throw new NotThere('photo', id);
    return shown;
  }
}
