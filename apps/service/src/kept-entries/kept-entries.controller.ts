import { Body, Controller, Param } from '@nestjs/common';
import { type DecideOnEntry as DecideRequest, routes } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { DecideOnEntry } from './decide-on-entry.js';
import { ListKeptEntries } from './list-kept-entries.query.js';

@Controller()
export class KeptEntriesController {
  constructor(
    private readonly list: ListKeptEntries,
    private readonly decide: DecideOnEntry,
  ) {}

  @Route(routes.listKeptEntries)
  all() {
    return this.list.run();
  }

  @Route(routes.decideOnEntry)
  one(@Param('entry') entry: string, @Body({ schema: routes.decideOnEntry.body }) request: DecideRequest) {
    return this.decide.run(entry, request);
  }
}
