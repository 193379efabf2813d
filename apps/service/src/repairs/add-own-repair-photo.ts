import { Injectable } from '@nestjs/common';
import { AddOwnRepairPhoto as Request } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { findAuthor } from '../platform/facts/author.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { type AddedPhoto, keepPhoto, recordOfForm } from '../platform/photos/keep-photo.js';
import { notKeptAgain } from '../platform/photos/erase-unneeded.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { findOwnRepair } from './find-own-repair.js';
import { RepairPhotoEntity } from './repair-photo.entity.js';

/** Adds a photo to an outside repair that the dealer who calls reported, and says what it shows. */
@Injectable()
export class AddOwnRepairPhoto {
  constructor(
    private readonly db: DataSource,
    private readonly record: RecordFact,
    private readonly store: PhotoStore,
  ) {}

  async run(
    number: string,
    repair: string,
    recordField: string | undefined,
    photo: Buffer | undefined,
  ): Promise<Receipt<AddedPhoto>> {
    const request = recordOfForm(Request, recordField);
    // Who may not add it has nothing kept.
    await findAuthor(this.db.manager, request);
    await findOwnRepair(this.db.manager, number, repair);
    const kept = await keepPhoto(this.store, photo);
    const { originalSha256, width, height } = kept;
    const of = { ...request, number, repair, originalSha256 };
    const receipt = await this.record.run('repair photo added', of, async (fact) => {
      const repairId = await findOwnRepair(fact.tx, number, repair);
      await fact.insert(RepairPhotoEntity, { repairId, shows: request.shows, ...kept });
      return { originalSha256, width, height };
    });
    return notKeptAgain(this.db.manager, receipt);
  }
}
