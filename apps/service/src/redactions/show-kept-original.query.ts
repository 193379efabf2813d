import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { preparePhoto } from '../platform/photos/prepare-photo.js';
import { NotThere } from '../platform/refusals.js';
import { findPhoto } from './redact-photo.js';

/** The original of a redacted photo while something keeps it, without its metadata: for what it is kept for. */
@Injectable()
export class ShowKeptOriginal {
  constructor(
    private readonly db: DataSource,
    private readonly store: PhotoStore,
  ) {}

  async run(photo: string): Promise<Buffer> {
    const { root, original } = await findPhoto(this.db.manager, photo);
    const acts = await this.db.query<{ original: string }[]>(
      'select r.original from fact.photo_redacted r where r.photo_id = $1',
      [root],
    );
    const kept = acts.length > 0 && acts.every((act) => act.original === 'kept apart');
    const file = kept ? await this.store.read(original) : undefined;
    if (!file) throw new NotThere('original kept apart of photo', photo);
    return (await preparePhoto(file)).shown;
  }
}
