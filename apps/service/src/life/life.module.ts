import { Module } from '@nestjs/common';
import { AmendLifeFact } from './amend-life-fact.js';
import { LifeController } from './life.controller.js';
import { RecordLifeFact } from './record-life-fact.js';
import { ReleaseHull } from './release-hull.js';

/** The life of a boat: where it is, and its release. */
@Module({ controllers: [LifeController], providers: [RecordLifeFact, ReleaseHull, AmendLifeFact] })
export class LifeModule {}
