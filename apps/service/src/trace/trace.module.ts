import { Module } from '@nestjs/common';
import { DefectSuspects } from './defect-suspects.query.js';
import { HullLots } from './hull-lots.query.js';
import { LotHulls } from './lot-hulls.query.js';
import { SharedLots } from './shared-lots.query.js';
import { TraceController } from './trace.controller.js';

/** The search: lot to hulls, hull to lots, hulls to shared lots, a defect to its lots. */
@Module({ controllers: [TraceController], providers: [LotHulls, HullLots, SharedLots, DefectSuspects] })
export class TraceModule {}
