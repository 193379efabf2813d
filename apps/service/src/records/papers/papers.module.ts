import { Module } from '@nestjs/common';
import { HoldPointsController } from './hold-points/hold-points.controller.js';
import { DrawHoldPoints } from './hold-points/hold-points.query.js';
import { LotReportController } from './lot-report/lot-report.controller.js';
import { DrawLotReport } from './lot-report/lot-report.query.js';

/** Papers beside the build record: of a lot, of a part in the bay, of equipment. */
@Module({ controllers: [LotReportController, HoldPointsController], providers: [DrawLotReport, DrawHoldPoints] })
export class PapersModule {}
