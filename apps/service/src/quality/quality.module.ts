import { Module } from '@nestjs/common';
import { CountDefects } from './count-defects.query.js';
import { CountHulls } from './count-hulls.query.js';
import { ListConcessions } from './list-concessions.query.js';
import { ListWaiting } from './list-waiting.query.js';
import { QualityController } from './quality.controller.js';

/** What the quality desk looks at. */
@Module({
  controllers: [QualityController],
  providers: [ListWaiting, CountDefects, CountHulls, ListConcessions],
})
export class QualityModule {}
