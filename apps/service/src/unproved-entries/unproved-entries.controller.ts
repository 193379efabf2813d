import { Body, Controller, Param } from '@nestjs/common';
import { type ConfirmEntry as ConfirmRequest, routes } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ConfirmEntry } from './confirm-entry.js';
import { ListUnproved } from './list-unproved.query.js';

@Controller()
export class UnprovedEntriesController {
  constructor(
    private readonly list: ListUnproved,
    private readonly confirm: ConfirmEntry,
  ) {}

  @Route(routes.listUnproved)
  all() {
    return this.list.run();
  }

  @Route(routes.confirmEntry)
  say(@Param('entry') entry: string, @Body({ schema: routes.confirmEntry.body }) request: ConfirmRequest) {
    return this.confirm.run(entry, request);
  }
}
