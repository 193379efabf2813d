import { Controller } from '@nestjs/common';
import { routes } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ReadDaySheet } from './read-day-sheet.query.js';

@Controller()
export class DaySheetController {
  constructor(private readonly readDaySheet: ReadDaySheet) {}

  @Route(routes.readDaySheet)
  read() {
    return this.readDaySheet.run();
  }
}
