import { kg, PORT_SIDE, type Fields, type Shop } from '../shop.js';
import type { RunningService } from '../service.js';
import type { ModelDraw, ModelPlace, Source } from './model-facts.js';

/** When everything stands ready that a week begins with. */
export const BEGIN = Date.UTC(2026, 2, 1);
const DAY = 24 * 60 * 60_000;

/** What a correction came to: the id that stands now, or the name of the refusal. */
export interface Told {
  readonly id?: string;
  readonly refused?: string;
}

/** The real plant beside the model: one tank, one gun, hulls and decks, named apart from other weeks. */
export class Plant {
  private minutes = 0;
  private numbers = 0;
  readonly hulls: readonly string[];
  readonly decks: readonly string[];

  private constructor(
    readonly shop: Shop,
    readonly service: RunningService,
    readonly name: string,
  ) {
    this.hulls = [1, 2].map((n) => `${name}-HULL${n}`);
    this.decks = [1, 2].map((n) => `${name}-DECK${n}`);
  }

  static async open(shop: Shop, service: RunningService, name: string): Promise<Plant> {
    const plant = new Plant(shop, service, name);
    const happenedAt = iso(BEGIN);
    await shop.act('/api/tanks', { code: `${name}-T`, material: 'RES-VE', capacityKg: 1e5 });
    await shop.act('/api/equipment', { code: `${name}-G`, kind: 'gun', description: 'Chopper gun' });
    for (const hull of plant.hulls) await shop.startHull(hull, { happenedAt });
    for (const deck of plant.decks) await shop.startDeck(deck, { happenedAt });
    return plant;
  }

  /** Hull moldings and decks. */
  get parts(): readonly string[] {
    return [...this.hulls.map((hull) => `${hull}-H`), ...this.decks];
  }

  /** An instant: now, or some minutes ago when it is entered late. No two are the same. */
  at(lateMinutes: number): number {
    this.minutes += 10;
    this.numbers += 1;
    return BEGIN + DAY + Math.max(1, this.minutes - lateMinutes) * 60_000 + this.numbers;
  }

  code(what: string): string {
    this.numbers += 1;
    return `${this.name}-${what}${this.numbers}`;
  }

  record(path: string, at: number, fields: Fields): Promise<string> {
    return this.shop.act(path, { ...fields, happenedAt: iso(at) });
  }

  /** What a request says of something drawn. */
  taken(from: Source, kilograms: number): Fields {
    const source =
      'lot' in from ? from : 'tank' in from ? { tank: `${this.name}-T` } : { gun: `${this.name}-G`, feed: 'resin' };
    return { ...source, amount: kg(kilograms) };
  }

  /** The root of what an entry drew, by its kilograms: no two amounts of one entry may be the same. */
  async drawnBy(entry: string, table: ModelDraw['table'], kilograms: number): Promise<string> {
    const [row] = await this.service.asOwner<{ root: string }>(
      `select root from fact.${table} where entry_id = $1 and id = root and kg = $2`,
      [entry, kilograms],
    );
    return String(row?.root);
  }

  async lotRoot(code: string): Promise<string> {
    const [row] = await this.service.asOwner<{ root: string }>('select root from fact.lot where code = $1', [code]);
    return String(row?.root);
  }

  /** A defect, for a repair to put right. */
  defect(part: string, at: number): Promise<string> {
    return this.record(`/api/parts/${part}/defects`, at, { kind: 'dry-spot', place: PORT_SIDE });
  }

  /** Corrects the version of a fact that stands now, or withdraws it when nothing is set. */
  async correct(table: string, root: string, set?: Fields): Promise<Told> {
    const values = set === undefined ? {} : { set };
    const corrects = await this.standingId(table, root);
    const asked = this.shop.envelope({ corrects, reason: 'as it really was', ...values });
    const { status, body } = await this.shop.post('/api/corrections', asked);
    if (status === 201) return { id: String(body.result['replacement']) };
    if (status >= 500 || status === 400) throw new Error(`A correction of ${table}: ${JSON.stringify(body)}`);
    return { refused: String((body as unknown as { type: string }).type).replace('/problems/', '') };
  }

  private async standingId(table: string, root: string): Promise<string> {
    const [row] = await this.service.asOwner<{ id: string }>(
      `select x.id from fact.${table} x where x.root = $1
       and not exists (select from fact.correction c where c.corrects = x.id)`,
      [root],
    );
    if (!row) throw new Error(`Nothing stands of ${table} ${root}.`);
    return row.id;
  }

  /** Where more can be added to a place; a touch-up is one entry. */
  pathOf({ kind, id }: ModelPlace): string {
    return { layer: `/api/layers/${id}`, joint: `/api/joints/${id}`, repair: `/api/repairs/${id}`, 'touch-up': '' }[
      kind
    ];
  }
}

export const iso = (at: number): string => new Date(at).toISOString();
