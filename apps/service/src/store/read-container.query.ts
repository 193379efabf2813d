import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { ContainerView } from '@hull-record/contracts';
import { NotThere } from '../platform/refusals.js';
import { CONTAINERS } from '../platform/store/containers.sql.js';

/** One container by its label: where it stands, when it was opened, what is left in it by the book. */
@Injectable()
export class ReadContainer {
  constructor(private readonly db: DataSource) {}

  async run(label: string): Promise<ContainerView> {
    const [found] = await this.db.query<ContainerView[]>(`${CONTAINERS('c.label = $1')} limit 1`, [label]);
    if (!found) throw new NotThere('container', label);
    return found;
  }
}
