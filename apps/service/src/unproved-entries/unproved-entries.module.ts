import { Module } from '@nestjs/common';
import { ConfirmEntry } from './confirm-entry.js';
import { ListUnproved } from './list-unproved.query.js';
import { UnprovedEntriesController } from './unproved-entries.controller.js';

/** Entries in the name of somebody who gave no PIN, until that person says whether they are theirs. */
@Module({ controllers: [UnprovedEntriesController], providers: [ListUnproved, ConfirmEntry] })
export class UnprovedEntriesModule {}
