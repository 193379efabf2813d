import { randomUUID } from 'node:crypto';
import type { RunningService } from './service.js';

/** What the service answered: status and JSON. */
export interface Answer {
  readonly status: number;
  // The tests read into answers freely; their shapes are checked against the contracts elsewhere.
  readonly body: Record<string, never> & { readonly id: string; readonly result: Record<string, never> };
}

export type Fields = Readonly<Record<string, unknown>>;

/** Kilograms that were weighed. */
export const kg = (quantity: number | string, basis = 'weighed') => ({ quantity, unit: 'kg', basis });

/**
 * A small shop that speaks to the service over HTTP as its people do. Every act has sound defaults; a test says only
 * what it is about. Each act throws unless it was recorded; `post` and `get` hand out the answer as it is.
 */
export class Shop {
  private minutes = 0;

  constructor(private readonly service: RunningService) {}

  /** A later instant at each call, a minute apart, in the first days of 2026. */
  tick(): string {
    this.minutes += 1;
    return new Date(Date.UTC(2026, 0, 5, 7, this.minutes)).toISOString();
  }

  envelope(more: Fields = {}): Fields {
    return { id: randomUUID(), enteredBy: 'ADMIN', device: 'DESK', happenedAt: this.tick(), ...more };
  }

  async post(path: string, body: Fields): Promise<Answer> {
    const answer = await fetch(`${this.service.url}${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    return { status: answer.status, body: (await answer.json()) as Answer['body'] };
  }

  async get(path: string): Promise<Answer> {
    const answer = await fetch(`${this.service.url}${path}`);
    return { status: answer.status, body: (await answer.json()) as Answer['body'] };
  }

  /** Records something and gives its receipt's id; throws when it is refused. */
  async act(path: string, fields: Fields): Promise<string> {
    return (await this.receipt(path, fields)).id;
  }

  /** Records something and gives its receipt; throws when it is refused. */
  async receipt(path: string, fields: Fields): Promise<Answer['body']> {
    const { status, body } = await this.post(path, this.envelope(fields));
    if (status !== 201) throw new Error(`${path}: ${status} ${JSON.stringify(body)}`);
    return body;
  }

  /** People, a gauge, a dealer, materials, a model with schedules, molds: what every shop begins with. */
  async open(): Promise<this> {
    for (const [badge, role] of PEOPLE)
      await this.act('/api/people', { badge, name: `Person ${badge}`, roles: [role] });
    await this.act('/api/devices', { code: 'TAB-1', description: 'Tablet at mold 1', ratedForClassifiedArea: false });
    await this.act('/api/equipment', { code: 'MG-1', kind: 'gauge', description: 'Mil gauge' });
    await this.act('/api/dealers', { code: 'NLM', name: 'Northlight Marine', place: 'Calder Bay' });
    for (const material of MATERIALS) await this.act('/api/materials', material);
    await this.act('/api/tanks', { code: 'T1', material: 'RES-VE', capacityKg: 2_000 });
    await this.act('/api/models', { code: 'TS86', name: 'TS 86, open, 8.6 m', skins: SKINS });
    for (const schedule of SCHEDULES) await this.act('/api/models/TS86/schedules', schedule);
    await this.act('/api/molds', { code: 'M-86-1', model: 'TS86', partKind: 'hull molding' });
    await this.act('/api/molds', { code: 'M-86-D', model: 'TS86', partKind: 'deck' });
    return this;
  }

  receive(code: string, material: string, more: Fields = {}): Promise<string> {
    return this.act('/api/lots', {
      ...{
        code,
        material,
        supplier: 'Aldermoor Resins',
        supplierLot: `S-${code}`,
        amount: kg(1_000),
        state: 'released',
      },
      ...more,
    });
  }

  mix(code: string, inputs: readonly Fields[], more: Fields = {}): Promise<string> {
    return this.act('/api/mixes', { code, inputs, ...more });
  }

  fill(code: string, heel: Fields | null, inputs: readonly Fields[], more: Fields = {}): Promise<string> {
    return this.act('/api/tanks/T1/fills', { code, heel, inputs, ...more });
  }

  startHull(number: string, more: Fields = {}): Promise<string> {
    return this.act('/api/hulls', { number, model: 'TS86', mold: 'M-86-1', ...more });
  }

  /** Makes one layer of a hull molding (or of the part named), an hour long. */
  layer(hull: string, layer: string, used: readonly Fields[], more: Fields = {}): Promise<string> {
    const { part = `${hull}-H`, ...fields } = more;
    const at = this.tick();
    const times = { startedAt: at, endedAt: at, happenedAt: at };
    return this.act(`/api/parts/${String(part)}/layers`, { layer, ...times, doneBy: ['LAM-1'], used, ...fields });
  }

  sign(layer: string, more: Fields = {}): Promise<string> {
    return this.act(`/api/layers/${layer}/signatures`, { enteredBy: 'INS-1', ...more });
  }

  film(layer: string, spots: readonly (readonly [number, number])[], more: Fields = {}): Promise<Answer['body']> {
    const read = spots.map(([lastWet, nextDry]) => ({ lastWet, nextDry }));
    return this.receipt(`/api/layers/${layer}/readings`, {
      what: 'wet film',
      unit: 'mil',
      equipment: 'MG-1',
      spots: read,
      ...more,
    });
  }

  /** Makes a whole hull molding from three lots, with readings and signatures; it can be released. */
  async wholeHull(
    number: string,
    lots: { gel: string; resin: Fields; glass: string },
  ): Promise<{ gel: string; skin: string; bulk: string }> {
    await this.startHull(number);
    const gel = await this.layer(number, 'L1', [{ lot: lots.gel, amount: kg(18) }]);
    await this.film(gel, [
      [16, 18],
      [18, 20],
      [18, 20],
    ]);
    await this.sign(gel);
    const skin = await this.layer(number, 'L2', [
      { ...lots.resin, amount: kg(20) },
      { lot: lots.glass, amount: kg(9) },
    ]);
    const bulk = await this.layer(number, 'L3', [
      { ...lots.resin, amount: kg(60) },
      { lot: lots.glass, amount: kg(40) },
    ]);
    await this.sign(bulk);
    return { gel, skin, bulk };
  }
}

const PEOPLE = [
  ['REC-1', 'receiving'],
  ['LAM-1', 'laminator'],
  ['LAM-2', 'laminator'],
  ['INS-1', 'inspector'],
  ['PAT-1', 'patcher'],
  ['QUA-1', 'quality'],
] as const;

const MATERIALS: readonly Fields[] = [
  { code: 'GEL-W', name: 'Isophthalic gel coat, white', role: 'gel coat', densityKgPerL: 1.28, shelfLifeDays: 90 },
  { code: 'RES-VE', name: 'Vinyl ester resin', role: 'resin', densityKgPerL: 1.1 },
  { code: 'RES-PE', name: 'Polyester resin', role: 'resin' },
  { code: 'MEKP', name: 'MEKP catalyst', role: 'catalyst', densityKgPerL: 1.11 },
  { code: 'MAT-450', name: 'Chopped strand mat 450', role: 'glass', arealMassKgPerM2: 0.45 },
  { code: 'PASTE', name: 'Bonding paste', role: 'bonding paste', pieceMassKg: 12 },
];

/** Invented girths of an 8.6 m hull and its deck, mm. */
const SKINS = {
  'hull molding': {
    lengthMm: 8_600,
    stations: [
      { xMm: 0, edgeGirthMm: 1_900, chineGirthMm: 1_150, waterlineGirthMm: 1_250 },
      { xMm: 4_300, edgeGirthMm: 2_050, chineGirthMm: 1_250, waterlineGirthMm: 1_300 },
      { xMm: 8_600, edgeGirthMm: 900, chineGirthMm: 500, waterlineGirthMm: 600 },
    ],
    transom: { halfWidthMm: 1_250, heightMm: 900 },
  },
  deck: {
    lengthMm: 8_000,
    stations: [
      { xMm: 0, edgeGirthMm: 1_300 },
      { xMm: 8_000, edgeGirthMm: 400 },
    ],
  },
};

const SCHEDULES: readonly Fields[] = [
  {
    partKind: 'hull molding',
    version: 1,
    layers: [
      {
        code: 'L1',
        name: 'Gel coat',
        materials: [{ material: 'GEL-W', target: { quantity: 18, unit: 'kg' } }],
        readings: [
          { what: 'wet film', spots: 3, limits: { min: 16, max: 20, unit: 'mil' }, source: 'invented for tests' },
        ],
        climate: { airTemperature: { min: 18, max: 28, unit: 'C' } },
        holdPoint: 'HP 1',
      },
      {
        code: 'L2',
        name: 'Skin coat',
        plies: ['2 x mat 450'],
        materials: [{ material: 'RES-VE' }, { material: 'MAT-450' }],
        predecessors: ['L1'],
      },
      {
        code: 'L3',
        name: 'Bulk laminate',
        plies: ['4 x mat 450'],
        materials: [{ material: 'RES-VE' }, { material: 'RES-PE' }, { material: 'MAT-450' }],
        predecessors: ['L2'],
        holdPoint: 'HP 2',
      },
    ],
  },
  {
    partKind: 'deck',
    version: 1,
    layers: [{ code: 'D1', name: 'Deck laminate', materials: [{ material: 'RES-VE' }, { material: 'MAT-450' }] }],
  },
];
