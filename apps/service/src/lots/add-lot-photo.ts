import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { findAuthor } from '../platform/facts/author.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findLot } from '../platform/reach/find-lot.js';
import { keepPhoto, readPhotoRecord, type AddedPhoto } from '../platform/photos/keep-photo.js';
import { notKeptAgain } from '../platform/photos/erase-unneeded.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { LotPhotoEntity } from './lot-photo.entity.js';

/** Adds a photo of the certificate that a lot came with. */
@Injectable()
export class AddLotPhoto {
  constructor(
    private readonly db: DataSource,
    private readonly record: RecordFact,
    private readonly store: PhotoStore,
  ) {}

  async run(lot: string, recordField: string | undefined, original: Buffer | undefined): Promise<Receipt<AddedPhoto>> {
    const request = readPhotoRecord(recordField);
    // Who may not add it has nothing kept.
    await findAuthor(this.db.manager, request);
    const photo = await keepPhoto(this.store, original);
    const { originalSha256, width, height } = photo;
    const receipt = await this.record.run('lot photo added', { ...request, lot, originalSha256 }, async (fact) => {
      const found = await findLot(fact.tx, lot);
      await fact.insert(LotPhotoEntity, { lotId: found.id, ...photo });
      return { originalSha256, width, height };
    });
    return notKeptAgain(this.db.manager, receipt);
  }
}
