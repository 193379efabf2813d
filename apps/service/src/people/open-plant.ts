import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Config } from '../platform/config/config.js';
import { now } from '../platform/clock.js';
import { PlantEntity } from '../platform/facts/plant.entity.js';
import { RecordFact } from '../platform/facts/record-fact.js';
import { FIRST_BADGE, FIRST_DEVICE } from '../platform/people/first.js';
import { childId, sha256 } from '../platform/ids.js';
import { ClientIdReused } from '../platform/refusals.js';
import { DeviceEntity } from './device.entity.js';
import { writePerson } from './register-person.js';

/** Opens the plant of the configuration when it is not in the record: its first administrator and its first device. */
@Injectable()
export class OpenPlant {
  constructor(
    private readonly db: DataSource,
    private readonly record: RecordFact,
  ) {}

  /** @returns whether the plant was new */
  async run(plant: Config['plant']): Promise<boolean> {
    const known = await this.db.query<unknown[]>('select from fact.plant where code = $1', [plant.code]);
    if (known.length > 0) return false;
    const id = firstEntryOf(plant.code);
    const plantId = childId(id, 'plant');
    const envelope = { id, enteredBy: FIRST_BADGE, device: FIRST_DEVICE, happenedAt: now().toISOString() };
    // The plant is no row of a fact: what it says stands in the entry itself.
    const first = { ...envelope, plant };
    const author = {
      plantId,
      personId: id,
      deviceId: childId(id, '2'),
      badge: FIRST_BADGE,
      roles: ['administrator' as const],
      identity: 'stated' as const,
    };
    try {
      await this.record.run(
        'plant opened',
        first,
        async (fact) => {
          await fact.tx.insert(PlantEntity, { id: plantId, ...plant });
          await writePerson(fact, { badge: FIRST_BADGE, name: 'First administrator', roles: ['administrator'] });
          await fact.insert(DeviceEntity, {
            id: author.deviceId,
            code: FIRST_DEVICE,
            description: 'Office desk',
            ratedForClassifiedArea: false,
          });
          return { plant: plant.code };
        },
        { author },
      );
      return true;
    } catch (error) {
      // Another service opened it in between, at another millisecond.
      if (error instanceof ClientIdReused) return false;
      throw error;
    }
  }
}

/** Two services that start at once open one plant: both make the same id of its code. */
const firstEntryOf = (code: string): string => childId(sha256(code), 'plant opened');
