import { Injectable, type StreamableFile } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { drawAuthorityReport, drawLetters } from '@hull-record/paper';
import { readAsOne } from '../../../platform/database/read-as-one.js';
import { csvAnswer } from '../../../platform/http/csv.js';
import { pdfAnswer } from '../../../platform/papers/pdf-answer.js';
import { loadLetters, loadNoticePaper } from './load-notice-paper.js';
import { wordFollowUp, wordInitialReport, wordLetters } from './word-notice.js';

const HEAD = ['kind', 'name', 'address', 'email', 'hulls', 'dealer', 'state', 'class', 'proof', 'mailed', 'returned'];

/** The papers of a notice: letters and a list for mail merge, which hold personal data; and drafts of the reports. */
@Injectable()
export class NoticePapers {
  constructor(private readonly db: DataSource) {}

  /** @throws NotThere */
  async letters(notice: string): Promise<StreamableFile> {
    const facts = await readAsOne(this.db, (tx) => loadLetters(tx, notice));
    return pdfAnswer(drawLetters(wordLetters(facts, facts.recipients), facts.newest), 'letters', facts.notice.code);
  }

  /** @throws NotThere */
  async mailMerge(notice: string): Promise<StreamableFile> {
    const { recipients, notice: found } = await readAsOne(this.db, (tx) => loadLetters(tx, notice));
    const rows = recipients.map(({ kind, name, address, email, hulls, dealer, state, mailings }) => {
      const last = mailings.at(-1);
      return [
        ...[kind, name, address, email, hulls.join(' '), dealer, state],
        ...[last?.class ?? null, last?.proof ?? null, last?.happenedAt ?? null, last?.returned?.why ?? null],
      ];
    });
    return csvAnswer('recipients', found.code, HEAD, rows);
  }

  /** @throws NotThere */
  async initial(notice: string): Promise<StreamableFile> {
    const facts = await readAsOne(this.db, (tx) => loadNoticePaper(tx, notice));
    return pdfAnswer(drawAuthorityReport(wordInitialReport(facts), facts.newest), 'initial-report', facts.notice.code);
  }

  /** @throws NotThere */
  async followUp(notice: string): Promise<StreamableFile> {
    const facts = await readAsOne(this.db, (tx) => loadNoticePaper(tx, notice));
    return pdfAnswer(drawAuthorityReport(wordFollowUp(facts), facts.newest), 'follow-up-report', facts.notice.code);
  }
}
