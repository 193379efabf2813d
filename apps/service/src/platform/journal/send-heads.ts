import { Logger } from '@nestjs/common';
import { type DataSource } from 'typeorm';

/** A signed head to be sent, as the line that people keep. */
export interface HeadToSend {
  readonly plant: string;
  readonly number: number;
  readonly line: string;
}

/** A way on which heads get into the hands of others. `name` stays the same from start to start. */
export interface HeadWay {
  readonly name: string;
  /** @throws Error when the head may not have arrived */
  send(head: HeadToSend): Promise<void>;
}

/** So many heads are sent on one way in one round; the rest in the next. */
const AT_ONCE = 50;

const TO_SEND = `
  select p.code as plant, h.plant_id as "plantId", h.number, h.line
  from fact.tree_head h join fact.plant p on p.id = h.plant_id
  left join work.head_sent s on s.plant_id = h.plant_id and s.way = $1
  where h.number > coalesce(s.number, 0) order by h.plant_id, h.number limit $2`;

const KEEP = `
  insert into work.head_sent (plant_id, way, number, tried_at, trouble)
  values ($1, $2, $3, clock_timestamp(), $4)
  on conflict (plant_id, way) do update
  set number = excluded.number, tried_at = excluded.tried_at, trouble = excluded.trouble`;

/** Sends every head on every way, in order, each until it has arrived: what stays here alone proves nothing. */
export class SendHeads {
  private readonly log = new Logger('heads');

  constructor(
    private readonly db: DataSource,
    private readonly ways: readonly HeadWay[],
  ) {}

  /** Sends what has not arrived yet. What fails is said, and tried again in the next round. */
  async run(): Promise<void> {
    for (const way of this.ways) await this.on(way);
  }

  private async on(way: HeadWay): Promise<void> {
    const heads = await this.db.query<(HeadToSend & { plantId: string })[]>(TO_SEND, [way.name, AT_ONCE]);
    for (const { plantId, ...head } of heads) {
      try {
        await way.send(head);
      } catch (error) {
        this.log.warn(`Head ${head.number} was not sent by ${way.name} and is tried again: ${String(error)}`);
        await this.db.query(KEEP, [plantId, way.name, head.number - 1, String(error)]);
        return;
      }
      await this.db.query(KEEP, [plantId, way.name, head.number, null]);
    }
  }
}
