import { Module } from '@nestjs/common';
import { ListEquipment } from './list-equipment.query.js';
import { EquipmentController } from './equipment.controller.js';
import { RegisterEquipment } from './register-equipment.js';

/** Registers and lists gauges, guns, dispensers, scales and ovens. */
@Module({ controllers: [EquipmentController], providers: [RegisterEquipment, ListEquipment] })
export class EquipmentModule {}
