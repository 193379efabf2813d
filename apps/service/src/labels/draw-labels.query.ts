import { Injectable } from '@nestjs/common';
import type { Readable } from 'node:stream';
import { DataSource } from 'typeorm';
import type { AskLabels } from '@hull-record/contracts';
import { drawLabels, LabelTooSmall, type LabelsView } from '@hull-record/paper';
import { LABEL_STOCK, placesOf, type LabelStock } from '@hull-record/trade';
import { readAsOne } from '../platform/database/read-as-one.js';
import { InvalidRequest, Unprocessable } from '../platform/refusals.js';
import type { LabelledRow } from './labelled.sql.js';
import { LabelsNotThere } from './labels-not-there.js';
import { loadLabelled } from './load-labelled.js';
import { wordLabel } from './word-label.js';

/**
 * Draws labels for what is in the record.
 *
 * Same facts, same bytes: the moment on the paper is when the newest fact of what is labelled was recorded.
 */
@Injectable()
export class DrawLabels {
  constructor(private readonly db: DataSource) {}

  /**
   * @throws InvalidRequest when more places are to be skipped than the stock has, LabelsNotThere for unknown codes,
   *   Unprocessable `label-too-small`
   */
  async run({ stock: name, labels, skip }: AskLabels): Promise<Readable> {
    const stock: LabelStock = LABEL_STOCK[name];
    const places = placesOf(stock);
    if (skip >= places) {
      const detail = `${name} has ${places === 1 ? 'one place' : `${places} places`} a page: skip fewer`;
      throw new InvalidRequest([{ pointer: '/skip', detail }]);
    }
    const rows = await readAsOne(this.db, (tx) => loadLabelled(tx, labels));
    assertAllThere(labels, rows);
    const view = {
      plantName: rows[0]?.plant ?? '',
      labels: rows.map((row, i) => wordLabel(labels[i]?.of ?? 'lot', row)),
      skip,
    };
    const newest = Math.max(...rows.map((row) => row.newest.getTime()));
    return draw(view, stock, new Date(newest));
  }
}

function assertAllThere(
  labels: AskLabels['labels'],
  rows: readonly (LabelledRow | undefined)[],
): asserts rows is readonly LabelledRow[] {
  const missing = labels.flatMap((label, index) => (rows[index] === undefined ? [{ ...label, index }] : []));
  if (missing.length > 0) throw new LabelsNotThere(missing);
}

const draw = (view: LabelsView, stock: LabelStock, created: Date): Readable => {
  try {
    return drawLabels(view, stock, created);
  } catch (error) {
    if (!(error instanceof LabelTooSmall)) throw error;
    const { code = '' } = view.labels[error.index] ?? {};
    throw new Unprocessable(
      'label-too-small',
      `The label of ${code} has more on it than this stock has room for: choose a larger one.`,
      `/labels/${error.index}/code`,
    );
  }
};
