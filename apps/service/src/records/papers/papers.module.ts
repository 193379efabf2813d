import { Module } from '@nestjs/common';
import { EquipmentRecallController } from './equipment-recall/equipment-recall.controller.js';
import { DrawEquipmentRecall } from './equipment-recall/equipment-recall.query.js';
import { HeldHullsController } from './held-hulls/held-hulls.controller.js';
import { DrawHeldHulls } from './held-hulls/held-hulls.query.js';
import { NoticePapersController } from './notice/notice-papers.controller.js';
import { NoticePapers } from './notice/notice-papers.query.js';
import { HoldPointsController } from './hold-points/hold-points.controller.js';
import { DrawHoldPoints } from './hold-points/hold-points.query.js';
import { InquiryController } from './inquiry/inquiry.controller.js';
import { DrawInquiry } from './inquiry/inquiry.query.js';
import { LotReportController } from './lot-report/lot-report.controller.js';
import { DrawLotReport } from './lot-report/lot-report.query.js';
import { RepairOrderController } from './repair-order/repair-order.controller.js';
import { DrawRepairOrder } from './repair-order/repair-order.query.js';

/** Papers beside the build record: of a lot, of a part in the bay, of equipment. */
@Module({
  controllers: [
    HeldHullsController,
    NoticePapersController,
    LotReportController,
    HoldPointsController,
    RepairOrderController,
    EquipmentRecallController,
    InquiryController,
  ],
  providers: [
    DrawHeldHulls,
    NoticePapers,
    DrawLotReport,
    DrawHoldPoints,
    DrawRepairOrder,
    DrawEquipmentRecall,
    DrawInquiry,
  ],
})
export class PapersModule {}
