import { Module } from '@nestjs/common';
import { DrawBuildRecord } from './build-record.query.js';
import { RecordsController } from './records.controller.js';

/** Papers of a hull: the build record. */
@Module({ controllers: [RecordsController], providers: [DrawBuildRecord] })
export class RecordsModule {}
