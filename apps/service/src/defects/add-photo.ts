import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { findAuthor } from '../platform/facts/author.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { keepPhoto, readPhotoRecord, type AddedPhoto } from '../platform/photos/keep-photo.js';
import { notKeptAgain } from '../platform/photos/erase-unneeded.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { PhotoEntity } from './photo.entity.js';

export type { AddedPhoto };

/** Adds a photo to a defect. The original is kept as it came, under its hash; a copy without metadata is what is shown. */
@Injectable()
export class AddPhoto {
  constructor(
    private readonly db: DataSource,
    private readonly record: RecordFact,
    private readonly store: PhotoStore,
  ) {}

  async run(
    defect: string,
    recordField: string | undefined,
    original: Buffer | undefined,
  ): Promise<Receipt<AddedPhoto>> {
    const request = readPhotoRecord(recordField);
    // Who may not add it has nothing kept.
    await findAuthor(this.db.manager, request);
    const photo = await keepPhoto(this.store, original);
    const { originalSha256, width, height } = photo;
    const receipt = await this.record.run('photo added', { ...request, defect, originalSha256 }, async (fact) => {
      const found = await findStanding(fact.tx, 'defect', defect);
      await fact.insert(PhotoEntity, { defectId: found.root, ...photo });
      return { originalSha256, width, height };
    });
    return notKeptAgain(this.db.manager, receipt);
  }
}
