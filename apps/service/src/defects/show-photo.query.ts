import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { NotThere } from '../platform/refusals.js';

/** The copy of a photo that is shown: without metadata. */
@Injectable()
export class ShowPhoto {
  constructor(
    private readonly db: DataSource,
    private readonly store: PhotoStore,
  ) {}

  async run(id: string): Promise<Buffer> {
    const [photo] = await this.db.query<{ shown_sha256: string }[]>(
      `select p.shown_sha256 from fact.photo p where p.id::text = lower($1) and ${standing('p')}
       union all select p.shown_sha256 from fact.lot_photo p where p.id::text = lower($1) and ${standing('p')}
       union all select p.shown_sha256 from fact.claim_photo p where p.id::text = lower($1) and ${standing('p')}`,
      [id],
    );
    if (!photo) throw new NotThere('photo', id);
    const shown = await this.store.read(photo.shown_sha256);
    if (!shown) throw new NotThere('readable file of photo', id);
    return shown;
  }
}
