import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { WarrantyTermsView } from '@hull-record/contracts';
import { standing } from '../platform/facts/standing.js';
import { NotThere } from '../platform/refusals.js';

const LIST = `
  select t.id, t.version, t.from_model_year as "fromModelYear", t.to_model_year as "toModelYear", t.starts, t.covers,
    json_build_object('carries', t.transfer -> 'carries', 'untilYears', t.transfer -> 'untilYears') as transfer,
    t.exclusions, t.reason, t.happened_at as "from"
  from fact.warranty_terms t where t.model_id = $1 and ${standing('t')} order by t.version desc`;

/** The warranty terms of a model, the newest version first. */
@Injectable()
export class ListWarrantyTerms {
  constructor(private readonly db: DataSource) {}

  async run(model: string): Promise<WarrantyTermsView[]> {
    const [found] = await this.db.query<{ root: string }[]>(
      `select m.root from fact.model m where m.code = $1 and ${standing('m')}`,
      [model],
    );
    if (!found) throw new NotThere('model', model);
    return this.db.query<WarrantyTermsView[]>(LIST, [found.root]);
  }
}
