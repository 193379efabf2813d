import { Module } from '@nestjs/common';
import { DemoPlant } from './demo-plant.js';
import { DemoState } from './demo-state.js';

/** The demo plant. It borrows the use cases of the features from their own modules. */
@Module({ providers: [DemoPlant, DemoState] })
export class DemoModule {}
