import { Module } from '@nestjs/common';
import { DecideOnEntry } from './decide-on-entry.js';
import { KeptEntriesController } from './kept-entries.controller.js';
import { ListKeptEntries } from './list-kept-entries.query.js';

/** What revoked devices sent, for quality to admit or to set aside. */
@Module({ controllers: [KeptEntriesController], providers: [ListKeptEntries, DecideOnEntry] })
export class KeptEntriesModule {}
