import { Body, Controller, Param } from '@nestjs/common';
import { routes, type Correct as Request } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { Correct } from './correct.js';
import { ReadVersions } from './read-versions.query.js';

@Controller()
export class CorrectionsController {
  constructor(
    private readonly correct: Correct,
    private readonly versions: ReadVersions,
  ) {}

  @Route(routes.correct)
  amend(@Body({ schema: routes.correct.body }) request: Request) {
    return this.correct.run(request);
  }

  @Route(routes.readVersions)
  all(@Param('fact') fact: string) {
    return this.versions.run(fact);
  }
}
