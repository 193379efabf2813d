import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { DataSheetView } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { NotThere } from '../platform/refusals.js';

const SHEETS = `
  select s.id, s.issue, s.maker_data as "makerData", s.happened_at as from
  from fact.material m join fact.data_sheet s on s.material_id = m.root and ${standing('s')}
  where m.code = $1 and ${standing('m')} order by s.happened_at desc, s.recorded_at desc, s.id`;

/** The issues of a material's data sheet, the newest first. */
@Injectable()
export class ListDataSheets {
  constructor(private readonly db: DataSource) {}

  async run(material: string): Promise<DataSheetView[]> {
    const there: unknown[] = await this.db.query(`select from fact.material m where m.code = $1 and ${standing('m')}`, [
      material,
    ]);
    if (there.length === 0) throw new NotThere('material', material);
    return this.db.query(SHEETS, [material]);
  }
}
