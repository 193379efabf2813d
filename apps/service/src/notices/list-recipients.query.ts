import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Recipient } from '@hull-record/contracts';
import { readAsOne } from '../platform/database/read-as-one.js';
import { loadNotice } from '../platform/notices/load-notice.js';
import { loadRecipients } from '../platform/notices/load-recipients.js';

/** Whom a notice goes to, with addresses. */
@Injectable()
export class ListRecipients {
  constructor(private readonly db: DataSource) {}

  run(notice: string): Promise<Recipient[]> {
    return readAsOne(this.db, async (tx) => loadRecipients(tx, (await loadNotice(tx, notice)).state));
  }
}
