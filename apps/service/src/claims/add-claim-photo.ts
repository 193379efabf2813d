import { Injectable } from '@nestjs/common';
import { AddClaimPhoto as Request } from '@hull-record/contracts';
import { DataSource, type EntityManager } from 'typeorm';
import { findAuthor } from '../platform/facts/author.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { findStanding } from '../platform/lookups/find-standing.js';
import { keepPhoto, recordOfForm } from '../platform/photos/keep-photo.js';
import { notKeptAgain } from '../platform/photos/erase-unneeded.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { NotThere } from '../platform/refusals.js';
import { ClaimPhotoEntity } from './claim.entity.js';
import { findOwnHull } from '../platform/life/find-own-hull.js';

export interface AddedClaimPhoto {
  readonly originalSha256: string;
  readonly width: number;
  readonly height: number;
}

/** What comes with a photo: the record as a field of the form, and the file. */
export interface PhotoForm {
  readonly record: string | undefined;
  readonly photo: Buffer | undefined;
}

/** Adds a photo to a claim, and says which of the asked pictures it is. */
@Injectable()
export class AddClaimPhoto {
  constructor(
    private readonly db: DataSource,
    private readonly record: RecordFact,
    private readonly store: PhotoStore,
  ) {}

  run(claim: string, form: PhotoForm): Promise<Receipt<AddedClaimPhoto>> {
    return this.add({ claim }, form, async (tx) => (await findStanding(tx, 'claim', claim)).root);
  }

  /** For a dealer: a claim of an own hull; any other is answered as one that is not there. */
  ofOwn(number: string, claim: string, form: PhotoForm): Promise<Receipt<AddedClaimPhoto>> {
    return this.add({ number, claim }, form, async (tx) => {
      const { hullId } = await findOwnHull(tx, number);
      const found = await findStanding<{ id: string; root: string; hull_id: string }>(tx, 'claim', claim);
      if (found.hull_id !== hullId) throw new NotThere('claim', claim);
      return found.root;
    });
  }

  private async add(
    of: object,
    { record, photo }: PhotoForm,
    find: (tx: EntityManager) => Promise<string>,
  ): Promise<Receipt<AddedClaimPhoto>> {
    const request = recordOfForm(Request, record);
    // Who may not add it has nothing kept.
    await findAuthor(this.db.manager, request);
    await find(this.db.manager);
    const kept = await keepPhoto(this.store, photo);
    const { originalSha256, width, height } = kept;
    const receipt = await this.record.run('claim photo added', { ...request, ...of, originalSha256 }, async (fact) => {
      await fact.insert(ClaimPhotoEntity, { claimId: await find(fact.tx), shows: request.shows, ...kept });
      return { originalSha256, width, height };
    });
    return notKeptAgain(this.db.manager, receipt);
  }
}
