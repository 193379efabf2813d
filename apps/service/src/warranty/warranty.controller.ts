import { Body, Controller, Param } from '@nestjs/common';
import { routes, type SetWarrantyTerms as Request } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ListWarrantyTerms } from './list-warranty-terms.query.js';
import { SetWarrantyTerms } from './set-warranty-terms.js';

@Controller()
export class WarrantyController {
  constructor(
    private readonly setTerms: SetWarrantyTerms,
    private readonly listTerms: ListWarrantyTerms,
  ) {}

  @Route(routes.setWarrantyTerms)
  set(@Param('model') model: string, @Body({ schema: routes.setWarrantyTerms.body }) request: Request) {
    return this.setTerms.run(model, request);
  }

  @Route(routes.listWarrantyTerms)
  list(@Param('model') model: string) {
    return this.listTerms.run(model);
  }
}
