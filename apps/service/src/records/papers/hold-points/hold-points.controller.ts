import { Controller, Param, type StreamableFile } from '@nestjs/common';
import { routes } from '@hull-record/contracts';
import { Route } from '../../../platform/http/route.js';
import { pdfAnswer } from '../../../platform/papers/pdf-answer.js';
import { DrawHoldPoints } from './hold-points.query.js';

@Controller()
export class HoldPointsController {
  constructor(private readonly draw: DrawHoldPoints) {}

  @Route(routes.holdPoints)
  async holdPoints(@Param('part') part: string): Promise<StreamableFile> {
    const { number, pdf } = await this.draw.run(part);
    return pdfAnswer(pdf, 'hold-points', number);
  }
}
