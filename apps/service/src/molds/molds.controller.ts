import { Body, Controller, Param } from '@nestjs/common';
import { routes, type CareForMold as Request } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { CareForMold } from './care-for-mold.js';
import { MoldsTreated } from './molds-treated.query.js';
import { ReadMold } from './read-mold.query.js';

@Controller()
export class MoldsController {
  constructor(
    private readonly careForMold: CareForMold,
    private readonly readMold: ReadMold,
    private readonly moldsTreated: MoldsTreated,
  ) {}

  @Route(routes.careForMold)
  care(@Param('mold') mold: string, @Body({ schema: routes.careForMold.body }) request: Request) {
    return this.careForMold.run(mold, request);
  }

  @Route(routes.readMold)
  read(@Param('mold') mold: string) {
    return this.readMold.run(mold);
  }

  @Route(routes.moldsTreated)
  treated(@Param('lot') lot: string) {
    return this.moldsTreated.run(lot);
  }
}
