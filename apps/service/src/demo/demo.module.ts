import { Module } from '@nestjs/common';
import { DemoPlant } from './demo-plant.js';

/** The demo plant. */
@Module({ providers: [DemoPlant] })
export class DemoModule {}
