import { Controller } from '@nestjs/common';
import { routes } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { readAsOne } from '../platform/database/read-as-one.js';
import { Route } from '../platform/http/route.js';
import { KeyRing } from '../platform/journal/key-ring.js';
import { type Verified, verifyDatabase } from './verify-database.js';
import { wordsOf } from './words.js';

/** Looks over the whole database on request; who asks while a look is under way gets what it finds. */
@Controller()
export class VerifyController {
  private looking: Promise<Verified> | null = null;

  constructor(
    private readonly db: DataSource,
    private readonly ring: KeyRing,
  ) {}

  @Route(routes.verifyJournal)
  async verify() {
    const keys = new Set(this.ring.all().map(({ keyId }) => keyId));
    this.looking ??= readAsOne(this.db, (tx) => verifyDatabase(tx, { keys, held: [] })).finally(
      () => (this.looking = null),
    );
    const verified = await this.looking;
    return { faults: verified.faults, plants: verified.plants, says: wordsOf(verified) };
  }
}
