import { Module } from '@nestjs/common';
import { KeepExposure } from '../platform/exposure/keep-exposure.js';
import { KeepRoll } from '../platform/roll/keep-roll.js';
import { AnswerLooks } from './answer-looks.js';
import { CasesController } from './cases.controller.js';
import { CompareGroups } from './compare-groups.query.js';
import { FreezeCase } from './freeze-case.js';
import { LookAtCase } from './look-at-case.js';
import { OpenCase } from './open-case.js';
import { ReadCases } from './read-cases.query.js';
import { ReadLook } from './read-look.query.js';
import { RunLook } from './run-look.js';

/** Cases: what claimed hulls have in common, by settings that are frozen first. */
@Module({
  controllers: [CasesController],
  providers: [
    OpenCase,
    FreezeCase,
    LookAtCase,
    CompareGroups,
    ReadCases,
    ReadLook,
    RunLook,
    AnswerLooks,
    KeepRoll,
    KeepExposure,
  ],
})
export class CasesModule {}
