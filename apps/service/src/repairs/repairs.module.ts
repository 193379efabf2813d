import { Module } from '@nestjs/common';
import { InspectRepairAgain } from './inspect-repair-again.js';
import { JudgeRepair } from './judge-repair.js';
import { RecordRepair } from './record-repair.js';
import { RepairsController } from './repairs.controller.js';
import { UseInRepair } from './use-in-repair.js';

/** Repairs with what was used, accepted by another person. */
@Module({ controllers: [RepairsController], providers: [RecordRepair, UseInRepair, JudgeRepair, InspectRepairAgain] })
export class RepairsModule {}
