import { Module } from '@nestjs/common';
import { AssignHin } from './assign-hin.js';
import { CorrectHin } from './correct-hin.js';
import { HullsController } from './hulls.controller.js';
import { JoinPart } from './join-part.js';
import { ListHulls } from './list-hulls.query.js';
import { ReadHull } from './read-hull.query.js';
import { ScrapPart } from './scrap-part.js';
import { StartHull } from './start-hull.js';
import { StartPart } from './start-part.js';
import { UseInJoint } from './use-in-joint.js';

/** Hulls with their numbers, and the parts they are joined of. */
@Module({
  controllers: [HullsController],
  providers: [StartHull, StartPart, ScrapPart, JoinPart, UseInJoint, AssignHin, CorrectHin, ListHulls, ReadHull],
})
export class HullsModule {}
