import { randomUUID } from 'node:crypto';
import type { Headers } from './sessions.js';
import type { RunningService } from './service.js';
import { MATERIALS, PEOPLE, SCHEDULES, SKINS, type Fields } from './shop-stock.js';

/** What the service answered: status and JSON. */
export interface Answer {
  readonly status: number;
  // The tests read into answers freely; their shapes are checked against the contracts elsewhere.
  readonly body: Record<string, never> & { readonly id: string; readonly result: Record<string, never> };
}

export type { Fields } from './shop-stock.js';

/** Kilograms that were weighed. */
export const kg = (quantity: number | string, basis = 'weighed') => ({ quantity, unit: 'kg', basis });

/**
 * A small shop that speaks to the service over HTTP as its people do. Every act has sound defaults; a test says only
 * what it is about. Each act throws unless it was recorded; `post` and `get` hand out the answer as it is.
 */
export class Shop {
  private minutes = 0;

  constructor(private readonly service: RunningService) {}

  get url(): string {
    return this.service.url;
  }

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
      headers: { 'content-type': 'application/json', ...(await this.as(body)) },
      body: JSON.stringify(body),
    });
    return { status: answer.status, body: (await answer.json()) as Answer['body'] };
  }

  /** Signs in who enters it, at the device that it names; an unknown one is left to the first administrator. */
  private as({ enteredBy, device }: Fields): Promise<Headers> {
    const named = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined);
    const { signedIn } = this.service;
    return signedIn(named(enteredBy), named(device))
      .catch(() => signedIn(named(enteredBy)))
      .catch(() => signedIn());
  }

  async get(path: string): Promise<Answer> {
    const answer = await fetch(`${this.service.url}${path}`, { headers: await this.service.signedIn() });
    return { status: answer.status, body: (await answer.json()) as Answer['body'] };
  }

  /** Reads what is there; throws when the answer is not 200. */
  async read<T>(path: string): Promise<T> {
    const { status, body } = await this.get(path);
    if (status !== 200) throw new Error(`${path}: ${status} ${JSON.stringify(body)}`);
    return body as unknown as T;
  }

  /** Sends a record with a photo as a browser form does. */
  async postPhoto(path: string, record: unknown, photo?: Uint8Array, name = 'photo.jpg'): Promise<Answer> {
    const form = new FormData();
    form.set('record', typeof record === 'string' ? record : JSON.stringify(record));
    if (photo) form.set('photo', new Blob([new Uint8Array(photo)]), name);
    const headers = await this.as(typeof record === 'object' ? (record as Fields) : {});
    const answer = await fetch(`${this.service.url}${path}`, { method: 'POST', headers, body: form });
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
    for (const [badge, ...roles] of PEOPLE) await this.act('/api/people', { badge, name: `Person ${badge}`, roles });
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

  startDeck(number: string, more: Fields = {}): Promise<string> {
    return this.act('/api/parts', { number, kind: 'deck', model: 'TS86', mold: 'M-86-D', ...more });
  }

  join(hull: string, part: string, more: Fields = {}): Promise<string> {
    return this.act(`/api/hulls/${hull}/joints`, { part, doneBy: ['LAM-1'], ...more });
  }

  setState(lot: string, state: string, more: Fields = {}): Promise<string> {
    return this.act(`/api/lots/${lot}/states`, { state, reason: 'for a test', ...more });
  }

  /** Reports a dry spot on the port side, or what is named. */
  defect(part: string, more: Fields = {}): Promise<string> {
    return this.act(`/api/parts/${part}/defects`, { kind: 'dry-spot', place: PORT_SIDE, ...more });
  }

  repair(part: string, defects: readonly string[], more: Fields = {}): Promise<string> {
    const done = { defects, procedure: 'Ground out 12:1 and laid up.', doneBy: ['PAT-1'] };
    return this.act(`/api/parts/${part}/repairs`, { ...done, ...more });
  }

  judge(repair: string, accepted: boolean, more: Fields = {}): Promise<string> {
    const note = accepted ? {} : { note: 'still soft' };
    return this.act(`/api/repairs/${repair}/acceptances`, { enteredBy: 'INS-1', accepted, ...note, ...more });
  }

  dispose(of: string, about: string, disposition: string, concession?: string): Promise<string> {
    const number = concession === undefined ? {} : { concession };
    return this.act('/api/dispositions', { of, about, disposition, reason: 'for a test', ...number });
  }

  /** Corrects a fact, or withdraws it when nothing is set, and gives the id of what stands now. */
  async correct(corrects: string, set?: Fields): Promise<string> {
    const values = set === undefined ? {} : { set };
    const { result } = await this.receipt('/api/corrections', { corrects, reason: 'as it really was', ...values });
    return String(result['replacement']);
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

/** A place that is on the hull molding and on the deck. */
export const PORT_SIDE = { surface: 'shell', side: 'port', fromTransomMm: 2_000, girthMm: 600 } as const;
