import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { AddUnidentifiedPhoto as Record } from '@hull-record/contracts';
import { findAuthor } from '../platform/facts/author.js';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { unidentifiedIds } from '../platform/lots/make-unidentified.js';
import { notKeptAgain } from '../platform/photos/erase-unneeded.js';
import { keepPhoto, recordOfForm, type AddedPhoto } from '../platform/photos/keep-photo.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { NotThere } from '../platform/refusals.js';
import { LotPhotoEntity } from './lot-photo.entity.js';

/** Adds a photo of material that nobody could name. A tablet knows its own entry, and not the lots that came of it. */
@Injectable()
export class AddUnidentifiedPhoto {
  constructor(
    private readonly db: DataSource,
    private readonly record: RecordFact,
    private readonly store: PhotoStore,
  ) {}

  async run(
    entry: string,
    recordField: string | undefined,
    original: Buffer | undefined,
  ): Promise<Receipt<AddedPhoto>> {
    const request = recordOfForm(Record, recordField);
    // Who may not add it has nothing kept.
    await findAuthor(this.db.manager, request);
    const photo = await keepPhoto(this.store, original);
    const { originalSha256, width, height } = photo;
    const of = { ...request, entry, originalSha256 };
    const receipt = await this.record.run('unidentified photo added', of, async (fact) => {
      const lots = await findUnidentified(fact, entry, request.line);
      await fact.insertMany(
        LotPhotoEntity,
        lots.map((lotId) => ({ lotId, ...photo })),
      );
      return { originalSha256, width, height };
    });
    return notKeptAgain(this.db.manager, receipt);
  }
}

/**
 * The lots that an entry kept of one line of it: one for each part that the entry was about. A tablet off the network
 * sends its photo when quality may have named the material already: it is kept all the same, as what was told by.
 */
const findUnidentified = async (fact: Fact, entry: string, line: number): Promise<readonly string[]> => {
  const rows = await fact.tx.query<{ root: string }[]>(
    `select distinct l.root from fact.lot l where l.entry_id::text = lower($1) and l.origin = 'unidentified'`,
    [entry],
  );
  const ofLine = new Set(unidentifiedIds(entry.toLowerCase(), `/used/${line}/unidentified`, rows.length));
  const lots = rows.map(({ root }) => root).filter((root) => ofLine.has(root));
  if (lots.length === 0) throw new NotThere('unidentified material of entry', `${entry}, line ${line}`);
  return lots;
};
