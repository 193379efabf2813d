import { Injectable } from '@nestjs/common';
import type { Readable } from 'node:stream';
import { DataSource } from 'typeorm';
import { drawInquiry } from '@hull-record/paper';
import { personNow } from '../../../platform/access/call.js';
import { readAsOne } from '../../../platform/database/read-as-one.js';
import { loadInquiry } from './load-inquiry.js';
import { wordInquiry } from './word-inquiry.js';

/** Draws the report of a look at a case, for those who may see the case. */
@Injectable()
export class DrawInquiry {
  constructor(private readonly db: DataSource) {}

  /** @throws NotThere; Conflict while the look is not worked out */
  async run(
    code: string,
    look: string,
  ): Promise<{ readonly code: string; readonly look: number; readonly pdf: Readable }> {
    const { personId } = personNow();
    const facts = await readAsOne(this.db, (tx) => loadInquiry(tx, { code, look, personId }));
    return { code: facts.code, look: facts.look, pdf: drawInquiry(wordInquiry(facts), facts.newest) };
  }
}
