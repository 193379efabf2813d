import { kg, type Fields, type Shop } from '../shop.js';
import type { RunningService } from '../service.js';
import type { PlantModel } from './plant-model.js';

/** The real plant beside the model: one tank, one gun and one layer of one hull, named apart from other weeks. */
export class Plant {
  private minutes = 0;
  private numbers = 0;

  private constructor(
    readonly shop: Shop,
    readonly service: RunningService,
    readonly name: string,
    readonly layer: string,
  ) {}

  static async open(shop: Shop, service: RunningService, name: string): Promise<Plant> {
    await shop.act('/api/tanks', { code: `${name}-T`, material: 'RES-VE', capacityKg: 1e5 });
    await shop.act('/api/equipment', { code: `${name}-G`, kind: 'gun', description: 'Chopper gun' });
    await shop.startHull(`${name}-HULL`);
    const begun = new Date(Date.UTC(2026, 2, 1)).toISOString();
    const fields = { layer: 'L2', startedAt: begun, endedAt: begun, happenedAt: begun, doneBy: ['LAM-1'] };
    const layer = await shop.act(`/api/parts/${name}-HULL-H/layers`, fields);
    return new Plant(shop, service, name, layer);
  }

  /** An instant: now, or some minutes ago when it is entered late. No two are the same. */
  at(lateMinutes: number): number {
    this.minutes += 10;
    this.numbers += 1;
    return Date.UTC(2026, 2, 2) + Math.max(1, this.minutes - lateMinutes) * 60_000 + this.numbers;
  }

  code(what: string): string {
    this.numbers += 1;
    return `${this.name}-${what}${this.numbers}`;
  }

  record(path: string, at: number, fields: Fields): Promise<string> {
    return this.shop.act(path, { ...fields, happenedAt: new Date(at).toISOString() });
  }

  /** Draws from a lot, the tank or the gun into the layer, and gives the root of what was used. */
  async draw(from: PlantModel['draws'][number]['from'], kilograms: number, at: number): Promise<string> {
    const source =
      'lot' in from ? from : 'tank' in from ? { tank: `${this.name}-T` } : { gun: `${this.name}-G`, feed: 'resin' };
    const entry = await this.record(`/api/layers/${this.layer}/used`, at, {
      used: [{ ...source, amount: kg(kilograms) }],
    });
    const [used] = await this.service.asOwner<{ root: string }>(
      'select root from fact.used where entry_id = $1 and id = root',
      [entry],
    );
    return String(used?.root);
  }

  /** The version that stands now of something used. */
  async standing(
    root: string,
  ): Promise<{ readonly id: string; readonly lot: string; readonly origin: string; readonly kg: number }> {
    const [row] = await this.service.asOwner<{ id: string; lot: string; origin: string; kg: number }>(
      `select u.id, l.code as lot, l.origin, u.kg from fact.used u join fact.lot l on l.id = u.lot_id
       where u.root = $1 and not exists (select from fact.correction c where c.corrects = u.id)`,
      [root],
    );
    if (!row) throw new Error(`Nothing stands of ${root}.`);
    return row;
  }
}
