import { Injectable } from '@nestjs/common';
import type { Readable } from 'node:stream';
import { DataSource } from 'typeorm';
import { drawHoldPoints } from '@hull-record/paper';
import { readAsOne } from '../../../platform/database/read-as-one.js';
import { loadHoldPoints } from './hold-points-facts.js';
import { wordHoldPoints } from './word-hold-points.js';

/** Draws the hold points of a part as they are: the moment on the paper is when the newest fact it rests on was recorded. */
@Injectable()
export class DrawHoldPoints {
  constructor(private readonly db: DataSource) {}

  /**
   * @param part number or id
   * @throws NotThere
   */
  async run(part: string): Promise<{ readonly number: string; readonly pdf: Readable }> {
    const facts = await readAsOne(this.db, (tx) => loadHoldPoints(tx, part));
    return { number: facts.found.part.number, pdf: drawHoldPoints(wordHoldPoints(facts), facts.newest) };
  }
}
