import { Body, Controller, Param, Query } from '@nestjs/common';
import { routes, type ImportClimate as Request, type ReadClimateQuery } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ImportClimate } from './import-climate.js';
import { ReadClimate } from './read-climate.query.js';

@Controller()
export class ClimateController {
  constructor(
    private readonly importClimate: ImportClimate,
    private readonly readClimate: ReadClimate,
  ) {}

  @Route(routes.importClimate)
  import(@Param('area') area: string, @Body({ schema: routes.importClimate.body }) request: Request) {
    return this.importClimate.run(area, request);
  }

  @Route(routes.readClimate)
  read(@Param('area') area: string, @Query({ schema: routes.readClimate.query }) query: ReadClimateQuery) {
    return this.readClimate.run(area, query);
  }
}
