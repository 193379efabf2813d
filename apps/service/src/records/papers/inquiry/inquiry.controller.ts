import { Controller, Param, type StreamableFile } from '@nestjs/common';
import { routes } from '@hull-record/contracts';
import { Route } from '../../../platform/http/route.js';
import { pdfAnswer } from '../../../platform/papers/pdf-answer.js';
import { DrawInquiry } from './inquiry.query.js';

@Controller()
export class InquiryController {
  constructor(private readonly draw: DrawInquiry) {}

  @Route(routes.inquiryReport)
  async report(@Param('case') code: string, @Param('look') look: string): Promise<StreamableFile> {
    const report = await this.draw.run(code, look);
    return pdfAnswer(report.pdf, 'inquiry', `${report.code}-${report.look}`);
  }
}
