import { Injectable } from '@nestjs/common';
import type { Readable } from 'node:stream';
import { DataSource } from 'typeorm';
import { drawRepairOrder } from '@hull-record/paper';
import { readAsOne } from '../../../platform/database/read-as-one.js';
import { PrintCopies } from '../../../platform/photos/print-copies.js';
import { photosIn } from '../../word-photos.js';
import { loadRepairOrder } from './repair-order-facts.js';
import { wordRepairOrder } from './word-repair-order.js';

/** Draws an order to repair defects of a part: the moment on the paper is when the newest fact it rests on was recorded. */
@Injectable()
export class DrawRepairOrder {
  constructor(
    private readonly db: DataSource,
    private readonly copies: PrintCopies,
  ) {}

  /**
   * @param part number or id
   * @param defects marks or ids; all that are open when none are named
   * @throws NotThere when there is no such part
   * @throws InvalidRequest when the part has no such defect
   */
  async run(part: string, defects?: readonly string[]): Promise<{ readonly number: string; readonly pdf: Readable }> {
    const facts = await readAsOne(this.db, (tx) => loadRepairOrder(tx, part, defects));
    const pictures = await this.copies.of(photosIn(facts.defects));
    return { number: facts.found.part.number, pdf: drawRepairOrder(wordRepairOrder(facts, pictures), facts.newest) };
  }
}
