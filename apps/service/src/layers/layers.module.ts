import { Module } from '@nestjs/common';
import { AmendLayerRecord } from './amend-layer-record.js';
import { AmendUsed } from './amend-used.js';
import { LayersController } from './layers.controller.js';
import { RecordLayer } from './record-layer.js';
import { MoveToSchedule } from './move-to-schedule.js';
import { RecordLayers } from './record-layers.js';
import { SignHoldPoint } from './sign-hold-point.js';
import { UseInLayer } from './use-in-layer.js';

/** Layers as made, and the signing of hold points. */
@Module({
  controllers: [LayersController],
  providers: [RecordLayer, RecordLayers, MoveToSchedule, UseInLayer, SignHoldPoint, AmendLayerRecord, AmendUsed],
})
export class LayersModule {}
