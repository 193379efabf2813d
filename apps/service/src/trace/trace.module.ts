import { Module } from '@nestjs/common';
import { DefectSuspects } from './defect-suspects.query.js';
import { TraceGraphController } from './graph/trace-graph.controller.js';
import { TraceHulls } from './graph/trace-hulls.query.js';
import { TraceLot } from './graph/trace-lot.query.js';
import { HullLots } from './hull-lots.query.js';
import { LotHulls } from './lot-hulls.query.js';
import { DrawHullTrace } from './paper/hull-trace-paper.query.js';
import { TracePaperController } from './paper/trace-paper.controller.js';
import { DrawTrace } from './paper/trace-paper.query.js';
import { SharedLots } from './shared-lots.query.js';
import { TraceController } from './trace.controller.js';

/** The search: lot to hulls, hull to lots, hulls to shared lots, a defect to its lots. */
@Module({
  controllers: [TraceController, TraceGraphController, TracePaperController],
  providers: [LotHulls, HullLots, SharedLots, DefectSuspects, TraceLot, TraceHulls, DrawTrace, DrawHullTrace],
})
export class TraceModule {}
