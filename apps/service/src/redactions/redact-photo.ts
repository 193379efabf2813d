import { Injectable } from '@nestjs/common';
import type { RedactPhoto as Request } from '@hull-record/contracts';
import { DataSource, type EntityManager } from 'typeorm';
import { findAuthor } from '../platform/facts/author.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { isUuid } from '../platform/ids.js';
import { keepsData } from '../platform/life/keeps-data.js';
import { blackOut } from '../platform/photos/black-out.js';
import { askToErase } from '../platform/photos/erase-unneeded.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { shownOf } from '../platform/photos/shown-of.sql.js';
import { Conflict, NotThere, Unprocessable } from '../platform/refusals.js';
import { PhotoRedactedEntity } from '../platform/texts/redaction.entities.js';
import { PHOTOS } from './kinds.js';

export interface RedactedPhoto {
  readonly original: PhotoRedactedEntity['original'];
  readonly keptBecause: string | null;
  readonly alsoShownAs: readonly string[];
}

/**
 * Blacks out areas of a photo. The copy that is shown from then on is made of the one shown before, so that what was
 * blacked out once stays so; the other files of the photo are erased, but for the original while something keeps it.
 */
@Injectable()
export class RedactPhoto {
  constructor(
    private readonly db: DataSource,
    private readonly record: RecordFact,
    private readonly store: PhotoStore,
  ) {}

  async run(photo: string, request: Request): Promise<Receipt<RedactedPhoto>> {
    await findAuthor(this.db.manager, request);
    const before = await findPhoto(this.db.manager, photo);
    const shownSha256 = await this.draw(before, request);
    return this.record.run('photo redacted', { ...request, photo }, async (fact) => {
      await fact.tx.query('select pg_advisory_xact_lock(hashtextextended($1, 5))', [`photo/${before.root}`]);
      const now = await findPhoto(fact.tx, photo);
      if (shownSha256 === null || now.shown !== before.shown)
        throw new Conflict('redacted-meanwhile', 'Somebody else redacted this photo just now: look at it again.');
      const today = fact.recordedAt.toISOString().slice(0, 10);
      const because = now.hullId === null ? null : (await keepsData(fact.tx, now.hullId, today)).because;
      const original = because === null ? 'erased' : 'kept apart';
      const { areas, reason } = request;
      await fact.insert(PhotoRedactedEntity, { photoId: now.root, areas, reason, original, shownSha256 });
      await askToErase(fact.tx, now.root);
      return { original, keptBecause: because, alsoShownAs: await samePicture(fact.tx, now) };
    });
  }

  /** On disk before any fact is recorded; null when its file is gone, as at a retry after it was redacted further. */
  private async draw(photo: FoundPhoto, { id, areas }: Request): Promise<string | null> {
    const { shown, root, redacted } = photo;
    const picture = await this.store.read(shown);
    const known = await this.db.query<unknown[]>('select from fact.client_id where id = $1', [id.toLowerCase()]);
    if (known.length > 0) return null;
    if (areas.length === 0 && redacted) return shown;
    if (areas.length === 0) throw new Unprocessable('no-area', 'Mark at least one area to be blacked out.', '/areas');
    if (!picture) throw new NotThere('readable file of photo', root);
    return this.store.keep(await blackOut(picture, areas));
  }
}

export interface FoundPhoto {
  readonly root: string;
  readonly hullId: string | null;
  readonly shown: string;
  readonly original: string;
  readonly redacted: boolean;
}

const ANY = PHOTOS.map(
  ({ table, hull }) => `select x.root, ${hull} as "hullId", ${shownOf('x')} as shown, x.original_sha256 as original,
      exists (select from fact.photo_redacted r where r.photo_id = x.root) as redacted
    from fact.${table} x where x.id = $1`,
).join(' union all ');

/** @throws NotThere */
export const findPhoto = async (tx: EntityManager, photo: string): Promise<FoundPhoto> => {
  const [found] = isUuid(photo) ? await tx.query<FoundPhoto[]>(ANY, [photo]) : [];
  if (!found) throw new NotThere('photo', photo);
  return found;
};

const SAME = PHOTOS.map(
  ({ table }) => `select x.root as id from fact.${table} x where x.original_sha256 = $1 and x.root <> $2
    and not exists (select from fact.photo_redacted r where r.photo_id = x.root)`,
).join(' union ');

/** Other photos of the same file, which were not redacted. */
const samePicture = async (tx: EntityManager, { original, root }: FoundPhoto): Promise<readonly string[]> =>
  (await tx.query<{ id: string }[]>(SAME, [original, root])).map(({ id }) => id);
