import { Body, Controller, Param, Query } from '@nestjs/common';
import {
  routes,
  type CloseHold as CloseRequest,
  type DisposeHeld as DisposeRequest,
  type HeldHullsQuery,
  type HoldOther as OtherRequest,
  type LiftHold as LiftRequest,
  type ListHoldsQuery,
  type NarrowHold as NarrowRequest,
  type PlaceHold as HoldRequest,
} from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { CloseHold } from './close-hold.js';
import { DisposeHeld } from './dispose-held.js';
import { HoldOther } from './hold-other.js';
import { HoldReads } from './hold-reads.js';
import { LiftHold } from './lift-hold.js';
import { NarrowHold } from './narrow-hold.js';
import { PlaceHold } from './place-hold.js';

@Controller()
export class HoldsController {
  constructor(
    private readonly placeHold: PlaceHold,
    private readonly holdOther: HoldOther,
    private readonly narrowHold: NarrowHold,
    private readonly disposeHeld: DisposeHeld,
    private readonly liftHold: LiftHold,
    private readonly closeHold: CloseHold,
    private readonly reads: HoldReads,
  ) {}

  @Route(routes.placeHold)
  place(@Param('lot') lot: string, @Body({ schema: routes.placeHold.body }) request: HoldRequest) {
    return this.placeHold.run(lot, request);
  }

  @Route(routes.holdOther)
  other(@Body({ schema: routes.holdOther.body }) request: OtherRequest) {
    return this.holdOther.run(request);
  }

  @Route(routes.narrowHold)
  narrow(@Param('hold') hold: string, @Body({ schema: routes.narrowHold.body }) request: NarrowRequest) {
    return this.narrowHold.run(hold, request);
  }

  @Route(routes.disposeHeld)
  dispose(@Param('hold') hold: string, @Body({ schema: routes.disposeHeld.body }) request: DisposeRequest) {
    return this.disposeHeld.run(hold, request);
  }

  @Route(routes.liftHold)
  lift(@Param('hold') hold: string, @Body({ schema: routes.liftHold.body }) request: LiftRequest) {
    return this.liftHold.run(hold, request);
  }

  @Route(routes.closeHold)
  close(@Param('hold') hold: string, @Body({ schema: routes.closeHold.body }) request: CloseRequest) {
    return this.closeHold.run(hold, request);
  }

  @Route(routes.listHolds)
  list(@Query({ schema: routes.listHolds.query }) query: ListHoldsQuery) {
    return this.reads.list.run(query);
  }

  @Route(routes.listHeldHulls)
  hulls(@Param('hold') hold: string, @Query({ schema: routes.listHeldHulls.query }) query: HeldHullsQuery) {
    return this.reads.hulls.run(hold, query);
  }

  @Route(routes.readHold)
  read(@Param('hold') hold: string) {
    return this.reads.one.run(hold);
  }
}
