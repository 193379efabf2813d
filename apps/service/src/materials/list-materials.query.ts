import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { MaterialView } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';

/** Materials that stand, by code. */
@Injectable()
export class ListMaterials {
  constructor(private readonly db: DataSource) {}

  run(): Promise<MaterialView[]> {
    return this.db.query(`
      select m.root as id, m.code, m.name, m.role, m.maker, m.shelf_life_days as "shelfLifeDays",
        m.density_kg_per_l as "densityKgPerL", m.areal_mass_kg_per_m2 as "arealMassKgPerM2",
        m.piece_mass_kg as "pieceMassKg", m.loss_allowance as "lossAllowance", m.maker_data as "makerData"
      from fact.material m where ${standing('m')} order by m.code`);
  }
}
