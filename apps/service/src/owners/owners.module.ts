import { Module } from '@nestjs/common';
import { AllOwners } from './all-owners.query.js';
import { CorrectOwner } from './correct-owner.js';
import { EraseOwner } from './erase-owner.js';
import { LegalHolds } from './legal-holds.js';
import { ListOwners } from './list-owners.query.js';
import { OwnersController } from './owners.controller.js';
import { PrivacyController } from './privacy.controller.js';
import { ReadOwner } from './read-owner.query.js';
import { RecordOwnerRequest } from './record-owner-request.js';
import { RegisterOwner } from './register-owner.js';

/** Owners of hulls: whom a notice has to reach, and what they may ask of their data. */
@Module({
  controllers: [OwnersController, PrivacyController],
  providers: [
    ...[RegisterOwner, EraseOwner, ListOwners, AllOwners, ReadOwner],
    ...[RecordOwnerRequest, CorrectOwner, LegalHolds],
  ],
})
export class OwnersModule {}
