import { Module } from '@nestjs/common';
import { AmendReading } from './amend-reading.js';
import { ReadingsController } from './readings.controller.js';
import { TakeReadings } from './take-readings.js';

/** Readings on layers and repairs, judged spot by spot. */
@Module({ controllers: [ReadingsController], providers: [TakeReadings, AmendReading] })
export class ReadingsModule {}
