import { Body, Controller, Param, Query, StreamableFile } from '@nestjs/common';
import { routes, type AskSharedLots, type ReachQuery } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { DefectSuspects } from './defect-suspects.query.js';
import { HullLots } from './hull-lots.query.js';
import { LotHulls } from './lot-hulls.query.js';
import { SharedLots } from './shared-lots.query.js';

@Controller()
export class TraceController {
  constructor(
    private readonly lotHulls: LotHulls,
    private readonly hullLots: HullLots,
    private readonly sharedLots: SharedLots,
    private readonly defectSuspects: DefectSuspects,
  ) {}

  @Route(routes.streamLotHulls)
  async stream(
    @Param('lot') lot: string,
    @Query({ schema: routes.streamLotHulls.query }) query: Omit<ReachQuery, 'limit'>,
  ): Promise<StreamableFile> {
    return new StreamableFile(await this.lotHulls.stream(lot, query), { type: 'application/x-ndjson' });
  }

  @Route(routes.lotHulls)
  hullsOfLot(@Param('lot') lot: string, @Query({ schema: routes.lotHulls.query }) query: ReachQuery) {
    return this.lotHulls.page(lot, query);
  }

  @Route(routes.hullLots)
  lotsOfHull(@Param('number') number: string) {
    return this.hullLots.run(number);
  }

  @Route(routes.sharedLots)
  shared(@Body({ schema: routes.sharedLots.body }) ask: AskSharedLots) {
    return this.sharedLots.run(ask);
  }

  @Route(routes.defectSuspects)
  suspects(@Param('defect') defect: string) {
    return this.defectSuspects.run(defect);
  }
}
