import { Body, Controller, Param, UploadedFile } from '@nestjs/common';
import { routes, type FileOwnClaim as FileRequest } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { type PhotoFile, WithPhoto } from '../platform/photos/with-photo.js';
import { AddClaimPhoto } from './add-claim-photo.js';
import { FileOwnClaim } from './file-own-claim.js';
import { OwnClaims } from './own-claims.query.js';

@Controller()
export class OwnClaimsController {
  constructor(
    private readonly fileOwn: FileOwnClaim,
    private readonly claims: OwnClaims,
    private readonly addPhoto: AddClaimPhoto,
  ) {}

  @Route(routes.fileOwnClaim)
  file(@Param('number') number: string, @Body({ schema: routes.fileOwnClaim.body }) request: FileRequest) {
    return this.fileOwn.run(number, request);
  }

  @Route(routes.listOwnClaims)
  list(@Param('number') number: string) {
    return this.claims.run(number);
  }

  @Route(routes.addOwnClaimPhoto)
  @WithPhoto('AddClaimPhoto')
  photo(
    @Param('number') number: string,
    @Param('claim') claim: string,
    @Body('record') record?: string,
    @UploadedFile() file?: PhotoFile,
  ) {
    return this.addPhoto.ofOwn(number, claim, { record, photo: file?.buffer });
  }
}
