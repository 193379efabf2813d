import { Module } from '@nestjs/common';
import { DrawBuildRecord } from './build-record.query.js';
import { DrawOwnRecord } from './own-record.query.js';
import { RecordsController } from './records.controller.js';

/** Papers of a hull: the build record. */
@Module({ controllers: [RecordsController], providers: [DrawBuildRecord, DrawOwnRecord] })
export class RecordsModule {}
