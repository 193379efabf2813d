import { Module } from '@nestjs/common';
import { DaySheetController } from './day-sheet.controller.js';
import { ReadDaySheet } from './read-day-sheet.query.js';

/** What a tablet at a station keeps for when there is no network. */
@Module({ controllers: [DaySheetController], providers: [ReadDaySheet] })
export class DaySheetModule {}
