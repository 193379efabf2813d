import { Controller } from '@nestjs/common';
import { routes } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { readAsOne } from '../platform/database/read-as-one.js';
import { Route } from '../platform/http/route.js';
import { KeyRing } from '../platform/journal/key-ring.js';
import { PhotoStore } from '../platform/photos/photo-store.js';
import { checkFiles } from './check-files.js';
import { type Verified, verifyDatabase, withFiles } from './verify-database.js';
import { wordsOf } from './words.js';

/** Looks over the whole database and its stored files on request; who asks while a look is under way gets what it finds. */
@Controller()
export class VerifyController {
  private looking: Promise<Verified> | null = null;

  constructor(
    private readonly db: DataSource,
    private readonly ring: KeyRing,
    private readonly store: PhotoStore,
  ) {}

  @Route(routes.verifyJournal)
  async verify() {
    this.looking ??= this.look().finally(() => (this.looking = null));
    const verified = await this.looking;
    return { faults: verified.faults, plants: verified.plants, says: wordsOf(verified) };
  }

  private look(): Promise<Verified> {
    const keys = new Set(this.ring.all().map(({ keyId }) => keyId));
    return readAsOne(this.db, async (tx) =>
      withFiles(await verifyDatabase(tx, { keys, held: [] }), await checkFiles(tx, this.store.folder)),
    );
  }
}
