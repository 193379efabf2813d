import { Body, Controller, Param, Query } from '@nestjs/common';
import {
  routes,
  type CorrectOwner as CorrectRequest,
  type EndLegalHold,
  type ListAllOwnersQuery,
  type PlaceLegalHold,
  type RecordOwnerRequest as AskRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { AllOwners } from './all-owners.query.js';
import { CorrectOwner } from './correct-owner.js';
import { LegalHolds } from './legal-holds.js';
import { ReadOwner } from './read-owner.query.js';
import { RecordOwnerRequest } from './record-owner-request.js';

@Controller()
export class PrivacyController {
  constructor(
    private readonly all: AllOwners,
    private readonly reading: ReadOwner,
    private readonly asked: RecordOwnerRequest,
    private readonly correctOwner: CorrectOwner,
    private readonly holds: LegalHolds,
  ) {}

  @Route(routes.listAllOwners)
  list(@Query({ schema: routes.listAllOwners.query }) query: ListAllOwnersQuery) {
    return this.all.run(query);
  }

  @Route(routes.readOwner)
  read(@Param('owner') owner: string) {
    return this.reading.run(owner);
  }

  @Route(routes.exportOwner)
  json(@Param('owner') owner: string) {
    return this.reading.json(owner);
  }

  @Route(routes.exportOwnerSheet)
  csv(@Param('owner') owner: string) {
    return this.reading.csv(owner);
  }

  @Route(routes.recordOwnerRequest)
  request(@Param('owner') owner: string, @Body({ schema: routes.recordOwnerRequest.body }) request: AskRequest) {
    return this.asked.run(owner, request);
  }

  @Route(routes.correctOwner)
  correct(@Param('owner') owner: string, @Body({ schema: routes.correctOwner.body }) request: CorrectRequest) {
    return this.correctOwner.run(owner, request);
  }

  @Route(routes.placeLegalHold)
  place(@Param('number') number: string, @Body({ schema: routes.placeLegalHold.body }) request: PlaceLegalHold) {
    return this.holds.place(number, request);
  }

  @Route(routes.endLegalHold)
  end(@Param('hold') hold: string, @Body({ schema: routes.endLegalHold.body }) request: EndLegalHold) {
    return this.holds.end(hold, request);
  }
}
