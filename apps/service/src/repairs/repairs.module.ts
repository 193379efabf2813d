import { Module } from '@nestjs/common';
import { AddOwnRepairPhoto } from './add-own-repair-photo.js';
import { InspectRepairAgain } from './inspect-repair-again.js';
import { JudgeRepair } from './judge-repair.js';
import { OwnRepairsController } from './own-repairs.controller.js';
import { OwnRepairs } from './own-repairs.query.js';
import { RecordRepair } from './record-repair.js';
import { RepairsController } from './repairs.controller.js';
import { ReportOwnRepair } from './report-own-repair.js';
import { ShowOwnRepairPhoto } from './show-own-repair-photo.query.js';
import { UseInRepair } from './use-in-repair.js';

/** Repairs with what was used, accepted by another person; outside repairs that dealers report of own hulls. */
@Module({
  controllers: [RepairsController, OwnRepairsController],
  providers: [
    ...[RecordRepair, UseInRepair, JudgeRepair, InspectRepairAgain],
    ...[ReportOwnRepair, OwnRepairs, AddOwnRepairPhoto, ShowOwnRepairPhoto],
  ],
})
export class RepairsModule {}
