import { Injectable } from '@nestjs/common';
import type { Readable } from 'node:stream';
import { DataSource } from 'typeorm';
import { drawTracePaper } from '@hull-record/paper';
import { readAsOne } from '../../platform/database/read-as-one.js';
import { plantOf } from '../../platform/papers/plant-of.js';
import { TraceHulls } from '../graph/trace-hulls.query.js';
import { loadNewestOfHulls } from './newest-of-hulls.js';
import { PRINTED } from './trace-paper.query.js';
import { wordTrace } from './word-trace.js';

/** So many hulls are named by a file; a disk takes no name of any length. */
const NAMED = 3;

const namedBy = (codes: readonly string[]): string =>
  codes.length <= NAMED ? codes.join(' ') : `${codes[0]} and ${codes.length - 1} more`;

/** Draws where what is in one or some hulls came from. */
@Injectable()
export class DrawHullTrace {
  constructor(
    private readonly db: DataSource,
    private readonly trace: TraceHulls,
  ) {}

  /** @throws NotThere, InvalidRequest */
  async run(number: string, also?: string): Promise<{ readonly code: string; readonly pdf: Readable }> {
    return readAsOne(this.db, async (tx) => {
      const graph = await this.trace.read(tx, number, { nodes: PRINTED, also });
      const hulls = graph.nodes.filter(({ kind }) => kind === 'hull').map(({ id }) => id);
      const newest = await loadNewestOfHulls(tx, hulls);
      const view = wordTrace(graph, await plantOf(tx, 'hull', hulls[0] ?? ''), newest);
      return { code: namedBy(graph.codes), pdf: drawTracePaper(view, newest) };
    });
  }
}
