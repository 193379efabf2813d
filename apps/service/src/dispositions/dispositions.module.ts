import { Module } from '@nestjs/common';
import { Dispose } from './dispose.js';
import { RecordRework } from './record-rework.js';
import { DispositionsController } from './dispositions.controller.js';

/** What is done about things that are not as they should be, and concessions. */
@Module({ controllers: [DispositionsController], providers: [Dispose, RecordRework] })
export class DispositionsModule {}
