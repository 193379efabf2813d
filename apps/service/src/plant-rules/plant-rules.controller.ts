import { Body, Controller } from '@nestjs/common';
import { routes, type SetPlantRules as Request } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ReadPlantRules } from './read-plant-rules.query.js';
import { SetPlantRules } from './set-plant-rules.js';

@Controller()
export class PlantRulesController {
  constructor(
    private readonly setPlantRules: SetPlantRules,
    private readonly readPlantRules: ReadPlantRules,
  ) {}

  @Route(routes.setPlantRules)
  set(@Body({ schema: routes.setPlantRules.body }) request: Request) {
    return this.setPlantRules.run(request);
  }

  @Route(routes.readPlantRules)
  read() {
    return this.readPlantRules.run();
  }
}
