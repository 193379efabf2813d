import { Module } from '@nestjs/common';
import { HealthController } from './health.controller.js';

/** Whether the service lives and is ready. */
@Module({ controllers: [HealthController] })
export class HealthModule {}
