import { Module } from '@nestjs/common';
import { GoOnsController } from './go-ons.controller.js';
import { RecordGoOn } from './record-go-on.js';

/** Going on under nonconformance. */
@Module({ controllers: [GoOnsController], providers: [RecordGoOn] })
export class GoOnsModule {}
