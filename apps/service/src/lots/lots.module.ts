import { Module } from '@nestjs/common';
import { AddLotPhoto } from './add-lot-photo.js';
import { AddUnidentifiedPhoto } from './add-unidentified-photo.js';
import { AmendLot } from './amend-lot.js';
import { AmendLotInput } from './amend-lot-input.js';
import { ChangeLotState } from './change-lot-state.js';
import { CutKit } from './cut-kit.js';
import { IdentifyLot } from './identify-lot.js';
import { ListLots } from './list-lots.query.js';
import { LotsController } from './lots.controller.js';
import { MakeMix } from './make-mix.js';
import { ReadLot } from './read-lot.query.js';
import { ReceiveLot } from './receive-lot.js';

/** Lots: received, mixed and cut, and their states. */
@Module({
  controllers: [LotsController],
  providers: [
    ReceiveLot,
    ChangeLotState,
    MakeMix,
    CutKit,
    IdentifyLot,
    ListLots,
    ReadLot,
    AddLotPhoto,
    AddUnidentifiedPhoto,
    AmendLot,
    AmendLotInput,
  ],
})
export class LotsModule {}
