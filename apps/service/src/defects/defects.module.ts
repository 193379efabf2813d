import { Module } from '@nestjs/common';
import { AddPhoto } from './add-photo.js';
import { AmendDefect } from './amend-defect.js';
import { AnswerAsk } from './answer-ask.js';
import { DefectsController } from './defects.controller.js';
import { ReadDefect } from './read-defect.query.js';
import { ReportDefect } from './report-defect.js';
import { ShowPhoto } from './show-photo.query.js';

/** Defects at their places, with photos. */
@Module({
  controllers: [DefectsController],
  providers: [ReportDefect, ReadDefect, AddPhoto, ShowPhoto, AmendDefect, AnswerAsk],
})
export class DefectsModule {}
