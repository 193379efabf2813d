import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { shownOf } from '../platform/photos/shown-of.sql.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { NotThere } from '../platform/refusals.js';

const FIND = ['photo', 'lot_photo', 'claim_photo', 'repair_photo']
  .map(
    (table) => `select ${shownOf('p')} as shown from fact.${table} p where p.id::text = lower($1) and ${standing('p')}`,
  )
  .join(' union all ');

/** The copy of a photo that is shown: without metadata, and redacted when it was. */
@Injectable()
export class ShowPhoto {
  constructor(
    private readonly db: DataSource,
    private readonly store: PhotoStore,
  ) {}

  async run(id: string): Promise<Buffer> {
    const [photo] = await this.db.query<{ shown: string }[]>(FIND, [id]);
    if (!photo) throw new NotThere('photo', id);
    const shown = await this.store.read(photo.shown);
    if (!shown) throw new NotThere('readable file of photo', id);
    return shown;
  }
}
