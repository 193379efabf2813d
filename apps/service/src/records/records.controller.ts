import { Controller, Param, Query, StreamableFile } from '@nestjs/common';
import { routes, type BuildRecordQuery } from '@hull-record/contracts';
import { Route } from '../platform/http/route.js';
import { type BuildRecordPaper, DrawBuildRecord } from './build-record.query.js';
import { DrawOwnRecord } from './own-record.query.js';

@Controller()
export class RecordsController {
  constructor(
    private readonly draw: DrawBuildRecord,
    private readonly drawOwn: DrawOwnRecord,
  ) {}

  @Route(routes.buildRecord)
  async buildRecord(
    @Param('number') number: string,
    @Query({ schema: routes.buildRecord.query }) query: BuildRecordQuery,
  ): Promise<StreamableFile> {
    return toFile(await this.draw.run(number, query));
  }

  @Route(routes.drawOwnRecord)
  async ownRecord(
    @Param('number') number: string,
    @Query({ schema: routes.drawOwnRecord.query }) { asOf }: { asOf?: string },
  ): Promise<StreamableFile> {
    return toFile(await this.drawOwn.run(number, asOf));
  }
}

const toFile = (paper: BuildRecordPaper): StreamableFile =>
  new StreamableFile(paper.pdf, {
    type: 'application/pdf',
    disposition: `inline; filename="build-record-${fileSafe(paper.number)}.pdf"`,
  });

/** A hull number may hold anything that can be typed; a file name in a header may not. */
const fileSafe = (number: string): string => number.replace(/[^A-Za-z0-9._-]+/g, '_');
