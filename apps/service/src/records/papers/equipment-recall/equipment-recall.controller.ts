import { Controller, Param, type StreamableFile } from '@nestjs/common';
import { routes } from '@hull-record/contracts';
import { Route } from '../../../platform/http/route.js';
import { pdfAnswer } from '../../../platform/papers/pdf-answer.js';
import { DrawEquipmentRecall } from './equipment-recall.query.js';

@Controller()
export class EquipmentRecallController {
  constructor(private readonly draw: DrawEquipmentRecall) {}

  @Route(routes.equipmentRecall)
  async recall(@Param('equipment') equipment: string): Promise<StreamableFile> {
    const { code, pdf } = await this.draw.run(equipment);
    return pdfAnswer(pdf, 'equipment-recall', code);
  }
}
