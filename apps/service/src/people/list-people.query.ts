import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { standing } from '../platform/facts/standing.js';

/** Badges and roles, devices. Names are personal data and not listed here. */
@Injectable()
export class ListPeople {
  constructor(private readonly db: DataSource) {}

  people(): Promise<{ id: string; badge: string; roles: string[] }[]> {
    return this.db.query(`
      select p.root as id, p.badge,
        array(select distinct r.role from fact.person_role r where r.person_id = p.root and ${standing('r')} order by 1) as roles
      from fact.person p where ${standing('p')} order by p.badge`);
  }

  devices(): Promise<{ id: string; code: string; description: string; ratedForClassifiedArea: boolean }[]> {
    return this.db.query(`
      select d.root as id, d.code, d.description, d.rated_for_classified_area as "ratedForClassifiedArea"
      from fact.device d where ${standing('d')} order by d.code`);
  }
}
