import { Module } from '@nestjs/common';
import { CheckEquipment } from './check-equipment.js';
import { ListChecks } from './list-checks.query.js';
import { ListSuspects } from './list-suspects.query.js';
import { ListEquipment } from './list-equipment.query.js';
import { EquipmentController } from './equipment.controller.js';
import { RegisterEquipment } from './register-equipment.js';

/** Gauges, guns, dispensers, scales and ovens, with their checks and what they put in doubt. */
@Module({
  controllers: [EquipmentController],
  providers: [RegisterEquipment, ListEquipment, CheckEquipment, ListChecks, ListSuspects],
})
export class EquipmentModule {}
