import { Injectable } from '@nestjs/common';
import type { DeviceView } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { rolesAt } from '../platform/access/roles.sql.js';
import { standing } from '../platform/facts/standing.js';

/** Badges and roles, devices. Names are personal data and not listed here. */
@Injectable()
export class ListPeople {
  constructor(private readonly db: DataSource) {}

  people(): Promise<{ id: string; badge: string; roles: string[] }[]> {
    return this.db.query(`
      select p.root as id, p.badge,
        ${rolesAt('p.root', 'now()')} as roles
      from fact.person p where ${standing('p')} order by p.badge`);
  }

  devices(): Promise<DeviceView[]> {
    return this.db.query(`
      select d.root as id, d.code, d.description, d.rated_for_classified_area as "ratedForClassifiedArea",
        exists (select from work.device_credential c where c.device_id = d.root and c.revoked_at is null) as enrolled
      from fact.device d where ${standing('d')} order by d.code`);
  }
}
