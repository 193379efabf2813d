import { Injectable } from '@nestjs/common';
import type { Readable } from 'node:stream';
import { DataSource } from 'typeorm';
import { drawEquipmentRecall } from '@hull-record/paper';
import { readAsOne } from '../../../platform/database/read-as-one.js';
import { loadRecall } from './recall-facts.js';
import { wordRecall } from './word-recall.js';

/** Draws the recall list of equipment: the moment on the paper is when the newest fact it rests on was recorded. */
@Injectable()
export class DrawEquipmentRecall {
  constructor(private readonly db: DataSource) {}

  /**
   * @param equipment code or id
   * @throws NotThere
   */
  async run(equipment: string): Promise<{ readonly code: string; readonly pdf: Readable }> {
    const facts = await readAsOne(this.db, (tx) => loadRecall(tx, equipment));
    return { code: facts.equipment.code, pdf: drawEquipmentRecall(wordRecall(facts), facts.newest) };
  }
}
