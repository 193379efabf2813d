import { Injectable } from '@nestjs/common';
import { AddPhoto as Request } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { findAuthor } from '../platform/facts/author.js';
import { refusalOf } from '../platform/http/validation.js';
import { sha256 } from '../platform/ids.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { InvalidRequest } from '../platform/refusals.js';
import { PhotoEntity } from './photo.entity.js';
import { preparePhoto } from '../platform/photos/prepare-photo.js';

export interface AddedPhoto {
  readonly originalSha256: string;
  readonly width: number;
  readonly height: number;
}

/**
 * Adds a photo to a defect. The original is kept as it came, under its hash; a copy without metadata is what is shown.
 *
 * Both files are on disk before the fact is recorded: what is acknowledged is kept.
 */
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
    const request = readRecord(recordField);
    if (!original) throw new InvalidRequest([{ pointer: '/photo', detail: 'attach the photo as the file "photo"' }]);
    // Who may not add it has nothing kept.
    await findAuthor(this.db.manager, request);
    const photo = await preparePhoto(original);
    const originalSha256 = sha256(original);
    await this.store.keep(original);
    await this.store.keep(photo.shown);
    return this.record.run('photo added', { ...request, defect, originalSha256 }, async (fact) => {
      const found = await findStanding(fact.tx, 'defect', defect);
      const { width, height, type } = photo;
      await fact.insert(PhotoEntity, {
        defectId: found.root,
        originalSha256,
        originalType: type,
        originalBytes: original.length,
        shownSha256: sha256(photo.shown),
        width,
        height,
      });
      return { originalSha256, width, height };
    });
  }
}

const readRecord = (field: string | undefined): Request => {
  let json: unknown;
  try {
    json = JSON.parse(field ?? '');
  } catch {
    throw new InvalidRequest([
      { pointer: '/record', detail: 'is not JSON: send the record as the form field "record"' },
    ]);
  }
  const parsed = Request.safeParse(json);
  if (!parsed.success) throw refusalOf(parsed.error.issues);
  return parsed.data;
};
