import { Controller, Param, Query } from '@nestjs/common';
import { routes, type MapFilter, type MappedDefectsQuery } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { ListMappedDefects } from './list-mapped-defects.query.js';
import { ReadDefectMap } from './read-defect-map.query.js';

@Controller()
export class HullMapController {
  constructor(
    private readonly readDefectMap: ReadDefectMap,
    private readonly listMappedDefects: ListMappedDefects,
  ) {}

  @Route(routes.readDefectMap)
  map(@Param('model') model: string, @Query({ schema: routes.readDefectMap.query }) filter: MapFilter) {
    return this.readDefectMap.run(model, filter);
  }

  @Route(routes.listMappedDefects)
  list(@Param('model') model: string, @Query({ schema: routes.listMappedDefects.query }) query: MappedDefectsQuery) {
    return this.listMappedDefects.run(model, query);
  }
}
