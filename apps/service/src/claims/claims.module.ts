import { Module } from '@nestjs/common';
import { AddClaimPhoto } from './add-claim-photo.js';
import { ClaimsController } from './claims.controller.js';
import { DecideClaim } from './decide-claim.js';
import { FileClaim } from './file-claim.js';
import { FileOwnClaim } from './file-own-claim.js';
import { ListClaims } from './list-claims.query.js';
import { MarkClaim } from './mark-claim.js';
import { OwnClaims } from './own-claims.query.js';
import { OwnClaimsController } from './own-claims.controller.js';
import { ReadClaim } from './read-claim.query.js';

/** Claims, at the warranty desk and of a dealer's own hulls. */
@Module({
  controllers: [ClaimsController, OwnClaimsController],
  providers: [FileClaim, FileOwnClaim, AddClaimPhoto, DecideClaim, MarkClaim, ListClaims, ReadClaim, OwnClaims],
})
export class ClaimsModule {}
