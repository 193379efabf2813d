import { Module } from '@nestjs/common';
import { JudgeTouchUp } from './judge-touch-up.js';
import { RecordTouchUp } from './record-touch-up.js';
import { SetTouchUpLimit } from './set-touch-up-limit.js';
import { TouchUpsController } from './touch-ups.controller.js';

/** Many small cosmetic spots in one entry, with one acceptance. */
@Module({ controllers: [TouchUpsController], providers: [RecordTouchUp, JudgeTouchUp, SetTouchUpLimit] })
export class TouchUpsModule {}
