import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { DefectView } from '@hull-record/contracts';
import { findStanding } from '../platform/lookups/find-standing.js';
import { loadDefects, type DefectRow } from '../platform/views/faults.js';
import { NOW } from '../platform/views/making.js';
import { toDefectView } from '../platform/views/to-view.js';
import { loadVerdicts } from '../platform/views/verdicts.js';

/** One defect, by the id of any of its versions. */
@Injectable()
export class ReadDefect {
  constructor(private readonly db: DataSource) {}

  async run(id: string): Promise<DefectView> {
    const { root } = await findStanding(this.db.manager, 'defect', id);
    const [row] = (await loadDefects(this.db.manager, { roots: [root] }, NOW)) as [DefectRow];
    return toDefectView(row, await loadVerdicts(this.db.manager, [root], NOW));
  }
}
