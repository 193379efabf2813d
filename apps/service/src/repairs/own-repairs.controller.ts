import { Body, Controller, Param, StreamableFile, UploadedFile } from '@nestjs/common';
import { routes, type ReportOwnRepair as ReportRequest } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { type PhotoFile, WithPhoto } from '../platform/photos/with-photo.js';
import { AddOwnRepairPhoto } from './add-own-repair-photo.js';
import { OwnRepairs } from './own-repairs.query.js';
import { ReportOwnRepair } from './report-own-repair.js';
import { ShowOwnRepairPhoto } from './show-own-repair-photo.query.js';

@Controller()
export class OwnRepairsController {
  constructor(
    private readonly reportOwn: ReportOwnRepair,
    private readonly repairs: OwnRepairs,
    private readonly addPhoto: AddOwnRepairPhoto,
    private readonly showPhoto: ShowOwnRepairPhoto,
  ) {}

  @Route(routes.reportOwnRepair)
  report(@Param('number') number: string, @Body({ schema: routes.reportOwnRepair.body }) request: ReportRequest) {
    return this.reportOwn.run(number, request);
  }

  @Route(routes.listOwnRepairs)
  list(@Param('number') number: string) {
    return this.repairs.run(number);
  }

  @Route(routes.addOwnRepairPhoto)
  @WithPhoto('AddOwnRepairPhoto')
  photo(
    @Param('number') number: string,
    @Param('repair') repair: string,
    @Body('record') record?: string,
    @UploadedFile() file?: PhotoFile,
  ) {
    return this.addPhoto.run(number, repair, record, file?.buffer);
  }

  @Route(routes.showOwnRepairPhoto)
  async show(
    @Param('number') number: string,
    @Param('repair') repair: string,
    @Param('photo') photo: string,
  ): Promise<StreamableFile> {
    return new StreamableFile(await this.showPhoto.run(number, repair, photo), { type: 'image/jpeg' });
  }
}
