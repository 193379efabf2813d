import { Module } from '@nestjs/common';
import { FlawLimitsController } from './flaw-limits.controller.js';
import { ReadFlawLimits } from './read-flaw-limits.query.js';
import { SetFlawLimits } from './set-flaw-limits.js';

/** At which level a plant accepts flaws. */
@Module({ controllers: [FlawLimitsController], providers: [SetFlawLimits, ReadFlawLimits] })
export class FlawLimitsModule {}
