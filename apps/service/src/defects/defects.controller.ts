import { Body, Controller, Param, StreamableFile, UploadedFile, UseFilters, UseInterceptors } from '@nestjs/common';
import { FileInterceptor } from '@nestjs/platform-express';
import { routes, type AnswerAsk as AnswerRequest, type ReportDefect as DefectRequest } from '@hull-record/contracts';
import { DEFECT_KINDS } from '@hull-record/trade';
import { Route, TakesPhoto } from '../platform/http/route.js';
import { PHOTO_LIMITS, PhotoSizeFilter } from '../platform/photos/photo-size.filter.js';
import { AddPhoto } from './add-photo.js';
import { AnswerAsk } from './answer-ask.js';
import { ReadDefect } from './read-defect.query.js';
import { ReportDefect } from './report-defect.js';
import { ShowPhoto } from './show-photo.query.js';

@Controller()
export class DefectsController {
  constructor(
    private readonly reportDefect: ReportDefect,
    private readonly readDefect: ReadDefect,
    private readonly addPhoto: AddPhoto,
    private readonly showPhoto: ShowPhoto,
    private readonly answerAsk: AnswerAsk,
  ) {}

  @Route(routes.listDefectKinds)
  kinds() {
    return DEFECT_KINDS;
  }

  @Route(routes.reportDefect)
  report(@Param('part') part: string, @Body({ schema: routes.reportDefect.body }) request: DefectRequest) {
    return this.reportDefect.run(part, request);
  }

  @Route(routes.readDefect)
  read(@Param('defect') defect: string) {
    return this.readDefect.run(defect);
  }

  @Route(routes.answerAsk)
  answer(@Param('defect') defect: string, @Body({ schema: routes.answerAsk.body }) request: AnswerRequest) {
    return this.answerAsk.run(defect, request);
  }

  @Route(routes.addPhoto)
  @TakesPhoto()
  @UseFilters(PhotoSizeFilter)
  @UseInterceptors(FileInterceptor('photo', PHOTO_LIMITS))
  photo(
    @Param('defect') defect: string,
    @Body('record') record?: string,
    @UploadedFile() file?: { readonly buffer: Buffer },
  ) {
    return this.addPhoto.run(defect, record, file?.buffer);
  }

  @Route(routes.showPhoto)
  async show(@Param('photo') photo: string): Promise<StreamableFile> {
    return new StreamableFile(await this.showPhoto.run(photo), { type: 'image/jpeg' });
  }
}
