import { Body, Controller, Param, Query } from '@nestjs/common';
import { routes, type CureQuery, type DoseQuery, type PlanPatch } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { planPatch } from './plan-patch.js';
import { ReadCure } from './read-cure.query.js';
import { ReadDose } from './read-dose.query.js';

@Controller()
export class FiguresController {
  constructor(
    private readonly readDose: ReadDose,
    private readonly readCure: ReadCure,
  ) {}

  @Route(routes.readDose)
  dose(@Param('material') material: string, @Query({ schema: routes.readDose.query }) query: DoseQuery) {
    return this.readDose.run(material, query);
  }

  @Route(routes.planPatch)
  patch(@Body({ schema: routes.planPatch.body }) request: PlanPatch) {
    return planPatch(request);
  }

  @Route(routes.readCure)
  cure(@Param('part') part: string, @Query({ schema: routes.readCure.query }) query: CureQuery) {
    return this.readCure.run(part, query);
  }
}
