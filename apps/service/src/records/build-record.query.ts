import { Injectable } from '@nestjs/common';
import type { Readable } from 'node:stream';
import { DataSource, type EntityManager } from 'typeorm';
import { readAsOne } from '../platform/database/read-as-one.js';
import type { BuildRecordQuery } from '@hull-record/contracts';
import { drawBuildRecord } from '@hull-record/paper';
import { findHull } from '../platform/lookups/find-hull.js';
import { PrintCopies } from '../platform/photos/print-copies.js';
import { NotThere } from '../platform/refusals.js';
import { NOW } from '../platform/views/making.js';
import { cutFor, loadRoles } from './cut-for.js';
import { loadHull } from './load-hull.js';
import { loadRecordFacts, type RecordFacts } from './record-facts.js';
import { photosIn } from './word-photos.js';
import { withoutNotes } from './without-notes.js';
import { wordRecord } from './word-record.js';

/** The build record of a hull on paper. */
export interface BuildRecordPaper {
  /** The builder's hull number. */
  readonly number: string;
  readonly pdf: Readable;
}

/**
 * Draws the build record of a hull as it was recorded by an instant, or as it is.
 *
 * Same facts, same bytes: the moment on the paper is when the newest of its facts was recorded, not when it is drawn.
 */
@Injectable()
export class DrawBuildRecord {
  constructor(
    private readonly db: DataSource,
    private readonly copies: PrintCopies,
  ) {}

  /** @throws NotThere when there is no such hull, or was none at that instant */
  async run(number: string, { asOf, cut = 'internal' }: Partial<BuildRecordQuery> = {}): Promise<BuildRecordPaper> {
    const { facts, roles } = await readAsOne(this.db, async (tx) => ({
      facts: await load(tx, number, asOf),
      roles: cut === 'internal' ? new Map<string, string>() : await loadRoles(tx),
    }));
    const pictures = await this.copies.of(photosIn(facts.defects));
    const view = cutFor(wordRecord(cut === 'dealer' ? withoutNotes(facts) : facts, pictures), cut, roles);
    return { number: facts.hull.number, pdf: drawBuildRecord(view, facts.newest) };
  }
}

const load = async (tx: EntityManager, number: string, asOf: string | undefined): Promise<RecordFacts> => {
  const hull = await loadHull(tx, await findHull(tx, number), asOf ?? NOW);
  if (!hull) throw new NotThere('hull', `${number} in the record as of ${asOf ?? NOW}`);
  return loadRecordFacts(tx, hull, asOf ?? NOW);
};
