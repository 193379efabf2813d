import { Injectable, type StreamableFile } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { drawHeldHulls } from '@hull-record/paper';
import { readAsOne } from '../../../platform/database/read-as-one.js';
import type { HeldRow } from '../../../platform/holds/load-held-hulls.js';
import { csvAnswer } from '../../../platform/http/csv.js';
import { pdfAnswer } from '../../../platform/papers/pdf-answer.js';
import { loadHeldPaper } from './load-held-paper.js';
import { wordHeldHulls, wordShare } from './word-held-hulls.js';

const HEAD = [
  ...['hull', 'hin', 'part', 'model', 'state', 'dealer', 'left the plant', 'reached', 'share', 'state when placed'],
  ...['disposed of', 'disposition', 'on', 'by', 'note', 'evidence'],
];

/** The list of hulls that a hold reaches, each with its disposition: as paper, and as a sheet. */
@Injectable()
export class DrawHeldHulls {
  constructor(private readonly db: DataSource) {}

  /** @throws NotThere */
  async pdf(hold: string): Promise<StreamableFile> {
    const facts = await readAsOne(this.db, (tx) => loadHeldPaper(tx, hold));
    return pdfAnswer(drawHeldHulls(wordHeldHulls(facts), facts.newest), 'held-hulls', facts.thing);
  }

  /** @throws NotThere */
  async csv(hold: string): Promise<StreamableFile> {
    const { held, thing } = await readAsOne(this.db, (tx) => loadHeldPaper(tx, hold));
    return csvAnswer('held-hulls', thing, HEAD, held.rows.map(toRow));
  }
}

const yes = (is: boolean): string => (is ? 'yes' : 'no');

const toRow = (row: HeldRow): (string | null)[] => {
  const last = row.said.at(-1);
  return [
    ...[row.hull, row.hin, row.part, row.modelName, row.state, row.dealer, row.leftAt, yes(row.reached)],
    ...[wordShare(row), row.atHold?.state ?? 'came since', yes(row.disposed), last?.what ?? null],
    ...[last?.happenedAt ?? null, last?.doneBy.join(' ') ?? null, last?.note ?? null, last?.evidence ?? null],
  ];
};
