import { Body, Controller, Param, Query, UploadedFile } from '@nestjs/common';
import {
  routes,
  type DecideClaim as DecideRequest,
  type FileClaim as FileRequest,
  type ListClaimsQuery,
  type MarkClaim as MarkRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { type PhotoFile, WithPhoto } from '../platform/photos/with-photo.js';
import { AddClaimPhoto } from './add-claim-photo.js';
import { DecideClaim } from './decide-claim.js';
import { FileClaim } from './file-claim.js';
import { ListClaims } from './list-claims.query.js';
import { MarkClaim } from './mark-claim.js';
import { ReadClaim } from './read-claim.query.js';

@Controller()
export class ClaimsController {
  constructor(
    private readonly fileClaim: FileClaim,
    private readonly listClaims: ListClaims,
    private readonly readClaim: ReadClaim,
    private readonly addPhoto: AddClaimPhoto,
    private readonly decideClaim: DecideClaim,
    private readonly markClaim: MarkClaim,
  ) {}

  @Route(routes.fileClaim)
  file(@Param('number') number: string, @Body({ schema: routes.fileClaim.body }) request: FileRequest) {
    return this.fileClaim.run(number, request);
  }

  @Route(routes.listClaims)
  list(@Query({ schema: routes.listClaims.query }) query: ListClaimsQuery) {
    return this.listClaims.run(query);
  }

  @Route(routes.readClaim)
  read(@Param('claim') claim: string) {
    return this.readClaim.run(claim);
  }

  @Route(routes.addClaimPhoto)
  @WithPhoto('AddClaimPhoto')
  photo(@Param('claim') claim: string, @Body('record') record?: string, @UploadedFile() file?: PhotoFile) {
    return this.addPhoto.run(claim, { record, photo: file?.buffer });
  }

  @Route(routes.decideClaim)
  decide(@Param('claim') claim: string, @Body({ schema: routes.decideClaim.body }) request: DecideRequest) {
    return this.decideClaim.run(claim, request);
  }

  @Route(routes.markClaim)
  mark(@Param('claim') claim: string, @Body({ schema: routes.markClaim.body }) request: MarkRequest) {
    return this.markClaim.run(claim, request);
  }
}
