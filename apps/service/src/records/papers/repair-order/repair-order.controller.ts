import { Controller, Param, Query, type StreamableFile } from '@nestjs/common';
import { routes, type RepairOrderQuery } from '@hull-record/contracts';
import { Route } from '../../../platform/http/route.js';
import { pdfAnswer } from '../../../platform/papers/pdf-answer.js';
import { DrawRepairOrder } from './repair-order.query.js';

@Controller()
export class RepairOrderController {
  constructor(private readonly draw: DrawRepairOrder) {}

  @Route(routes.repairOrder)
  async repairOrder(
    @Param('part') part: string,
    @Query({ schema: routes.repairOrder.query }) query: RepairOrderQuery,
  ): Promise<StreamableFile> {
    const { number, pdf } = await this.draw.run(part, query.defect);
    return pdfAnswer(pdf, 'repair-order', number);
  }
}
