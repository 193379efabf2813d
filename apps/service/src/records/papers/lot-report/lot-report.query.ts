import { Injectable } from '@nestjs/common';
import type { Readable } from 'node:stream';
import { DataSource } from 'typeorm';
import { drawLotReport } from '@hull-record/paper';
import { readAsOne } from '../../../platform/database/read-as-one.js';
import { loadLotFacts } from './lot-facts.js';
import { wordLotReport } from './word-lot-report.js';

/** Draws the report of a lot as it is: the moment on the paper is when the newest fact it rests on was recorded. */
@Injectable()
export class DrawLotReport {
  constructor(private readonly db: DataSource) {}

  /**
   * @param lot code or id
   * @throws NotThere
   */
  async run(lot: string): Promise<{ readonly code: string; readonly pdf: Readable }> {
    const facts = await readAsOne(this.db, (tx) => loadLotFacts(tx, lot));
    return { code: facts.lot.code, pdf: drawLotReport(wordLotReport(facts), facts.newest) };
  }
}
