import { Injectable } from '@nestjs/common';
import type { Readable } from 'node:stream';
import { DataSource } from 'typeorm';
import { drawTracePaper } from '@hull-record/paper';
import { readAsOne } from '../../platform/database/read-as-one.js';
import { loadNewestOfLot } from '../../platform/papers/newest-of-lot.js';
import { plantOf } from '../../platform/papers/plant-of.js';
import { findLot } from '../../platform/reach/find-lot.js';
import { TraceLot } from '../graph/trace-lot.query.js';
import { wordTrace } from './word-trace.js';

/** So many lots and hulls are printed; of more, those with the most kilograms, and the paper says so. */
export const PRINTED = 600;

/** Draws where a lot went: the drawing of the trace, and its table. */
@Injectable()
export class DrawTrace {
  constructor(
    private readonly db: DataSource,
    private readonly trace: TraceLot,
  ) {}

  /** @throws NotThere */
  async run(name: string): Promise<{ readonly code: string; readonly pdf: Readable }> {
    return readAsOne(this.db, async (tx) => {
      const lot = await findLot(tx, name);
      const graph = await this.trace.read(tx, name, { nodes: PRINTED });
      const newest = await loadNewestOfLot(tx, lot.id);
      const view = wordTrace(graph, await plantOf(tx, 'lot', lot.id), newest);
      return { code: lot.code, pdf: drawTracePaper(view, newest) };
    });
  }
}
