import { Module } from '@nestjs/common';
import { CloseHold } from './close-hold.js';
import { DisposeHeld } from './dispose-held.js';
import { HoldOther } from './hold-other.js';
import { HoldReads } from './hold-reads.js';
import { HoldsController } from './holds.controller.js';
import { LiftHold } from './lift-hold.js';
import { ListHeldHulls } from './list-held-hulls.query.js';
import { ListHolds } from './list-holds.query.js';
import { NarrowHold } from './narrow-hold.js';
import { PlaceHold } from './place-hold.js';
import { ReadHold } from './read-hold.query.js';

/** Holds: on lots, containers, equipment, states of molds and periods; the hulls they reach, and what becomes of each. */
@Module({
  controllers: [HoldsController],
  providers: [
    ...[PlaceHold, HoldOther, NarrowHold, DisposeHeld, LiftHold, CloseHold],
    ...[HoldReads, ListHolds, ReadHold, ListHeldHulls],
  ],
})
export class HoldsModule {}
