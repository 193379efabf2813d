import { Controller, Param, type StreamableFile } from '@nestjs/common';
import { routes } from '@hull-record/contracts';
import { Route } from '../../platform/http/route.js';
import { pdfAnswer } from '../../platform/papers/pdf-answer.js';
import { DrawTrace } from './trace-paper.query.js';

@Controller()
export class TracePaperController {
  constructor(private readonly draw: DrawTrace) {}

  @Route(routes.lotTracePaper)
  async ofLot(@Param('lot') lot: string): Promise<StreamableFile> {
    const { code, pdf } = await this.draw.run(lot);
    return pdfAnswer(pdf, 'trace', code);
  }
}
