import { Body, Controller, Param, Query, UploadedFile, UseFilters, UseInterceptors } from '@nestjs/common';
import { FileInterceptor } from '@nestjs/platform-express';
import {
  routes,
  type ChangeLotState as StateRequest,
  type CutKit as KitRequest,
  type IdentifyLot as IdentifyRequest,
  type ListLotsQuery,
  type MakeMix as MixRequest,
  type ReceiveLot as ReceiveRequest,
} from '@hull-record/contracts';
import { Route, TakesPhoto } from '../platform/http/route.js';
import { PHOTO_LIMITS, PhotoSizeFilter } from '../platform/photos/photo-size.filter.js';
import { WithPhoto, type PhotoFile } from '../platform/photos/with-photo.js';
import { AddLotPhoto } from './add-lot-photo.js';
import { AddUnidentifiedPhoto } from './add-unidentified-photo.js';
import { ChangeLotState } from './change-lot-state.js';
import { CutKit } from './cut-kit.js';
import { IdentifyLot } from './identify-lot.js';
import { ListLots } from './list-lots.query.js';
import { MakeMix } from './make-mix.js';
import { ReadLot } from './read-lot.query.js';
import { ReceiveLot } from './receive-lot.js';

@Controller()
export class LotsController {
  constructor(
    private readonly receiveLot: ReceiveLot,
    private readonly changeLotState: ChangeLotState,
    private readonly makeMix: MakeMix,
    private readonly cutKit: CutKit,
    private readonly identifyLot: IdentifyLot,
    private readonly listLots: ListLots,
    private readonly readLot: ReadLot,
    private readonly addLotPhoto: AddLotPhoto,
    private readonly addUnidentifiedPhoto: AddUnidentifiedPhoto,
  ) {}

  @Route(routes.receiveLot)
  receive(@Body({ schema: routes.receiveLot.body }) request: ReceiveRequest) {
    return this.receiveLot.run(request);
  }

  @Route(routes.listLots)
  list(@Query({ schema: routes.listLots.query }) query: ListLotsQuery) {
    return this.listLots.run(query);
  }

  @Route(routes.readLot)
  read(@Param('lot') lot: string) {
    return this.readLot.run(lot);
  }

  @Route(routes.changeLotState)
  changeState(@Param('lot') lot: string, @Body({ schema: routes.changeLotState.body }) request: StateRequest) {
    return this.changeLotState.run(lot, request);
  }

  @Route(routes.identifyLot)
  identify(@Param('lot') lot: string, @Body({ schema: routes.identifyLot.body }) request: IdentifyRequest) {
    return this.identifyLot.run(lot, request);
  }

  @Route(routes.addLotPhoto)
  @TakesPhoto()
  @UseFilters(PhotoSizeFilter)
  @UseInterceptors(FileInterceptor('photo', PHOTO_LIMITS))
  photo(
    @Param('lot') lot: string,
    @Body('record') record?: string,
    @UploadedFile() file?: { readonly buffer: Buffer },
  ) {
    return this.addLotPhoto.run(lot, record, file?.buffer);
  }

  @Route(routes.addUnidentifiedPhoto)
  @WithPhoto('AddUnidentifiedPhoto')
  unidentifiedPhoto(@Param('entry') entry: string, @Body('record') record?: string, @UploadedFile() file?: PhotoFile) {
    return this.addUnidentifiedPhoto.run(entry, record, file?.buffer);
  }

  @Route(routes.checkMix)
  checkMix(@Body({ schema: routes.checkMix.body }) request: MixRequest) {
    return this.makeMix.check(request);
  }

  @Route(routes.makeMix)
  mix(@Body({ schema: routes.makeMix.body }) request: MixRequest) {
    return this.makeMix.run(request);
  }

  @Route(routes.cutKit)
  cut(@Body({ schema: routes.cutKit.body }) request: KitRequest) {
    return this.cutKit.run(request);
  }
}
