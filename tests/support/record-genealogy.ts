import { randomUUID } from 'node:crypto';
import type { InventedGenealogy, InventedLot } from './random-genealogy.js';
import { kg, type Shop } from './shop.js';

const PLACES = { 'layer-1': 'G1', 'layer-2': 'G2', 'joint-1': 'G3', 'repair-1': 'R' } as const;
type Place = keyof typeof PLACES;

const ROLES = ['resin', 'gel coat', 'catalyst', 'pigment', 'glass', 'putty', 'core'] as const;
const materialOf = (role: string): string => `ANY-${role}`;

/** Materials of every role, and a deck schedule with three layers, for invented genealogies. */
export const openForGenealogies = async (shop: Shop): Promise<void> => {
  for (const role of ROLES) await shop.act('/api/materials', { code: materialOf(role), name: role, role });
  const materials = ROLES.map((role) => ({ material: materialOf(role) }));
  const layers = ['G1', 'G2', 'G3'].map((code) => ({ code, name: code, materials }));
  await shop.act('/api/models/TS86/schedules', { partKind: 'deck', version: 9, layers });
};

/** Records an invented genealogy over HTTP, as a shop would: every code gets a prefix, so that many can share a plant. */
export class GenealogyRecorder {
  private readonly prefix = randomUUID().slice(0, 8);
  private readonly inTank = new Map<string, string>();
  private readonly joints = new Map<string, string>();
  private readonly places = new Map<string, string>();
  private tanks = 0;

  constructor(
    private readonly shop: Shop,
    private readonly facts: InventedGenealogy,
  ) {}

  code(name: string): string {
    return `${this.prefix}-${name}`;
  }

  async record(): Promise<void> {
    for (const lot of this.facts.lots) await this.lot(lot);
    for (const part of new Set([...this.facts.uses, ...this.facts.joins].map((each) => each.part))) {
      const tooling = { model: 'TS86', mold: 'M-86-D', kind: 'deck', scheduleVersion: 9 };
      await this.shop.act('/api/parts', { number: this.code(part), ...tooling });
    }
    for (const hull of new Set(this.facts.joins.map((each) => each.hull))) await this.shop.startHull(this.code(hull));
    for (const { part, hull } of this.facts.joins) {
      const joint = { part: this.code(part), doneBy: ['LAM-1'] };
      this.joints.set(part, await this.shop.act(`/api/hulls/${this.code(hull)}/joints`, joint));
    }
    for (const use of this.facts.uses) await this.use(use);
  }

  private async lot(lot: InventedLot): Promise<void> {
    const inputs = this.facts.inputs
      .filter((each) => each.lot === lot.id)
      .map((each) => ({ lot: this.code(each.input), amount: kg(each.quantity) }));
    const code = this.code(lot.id);
    if (lot.received) await this.shop.receive(code, materialOf(lot.role), { amount: kg(lot.kg) });
    else if (lot.origin === 'tank') await this.fill(code, inputs);
    else await this.shop.act(lot.origin === 'mixed' ? '/api/mixes' : '/api/kits', { code, inputs });
  }

  /** A fill that takes from what a tank holds is a fill of that tank, and takes it as its measured heel. */
  private async fill(code: string, inputs: readonly { lot: string; amount: unknown }[]): Promise<void> {
    const [tank, before] = [...this.inTank].find(([, lot]) => inputs.some((input) => input.lot === lot)) ?? [];
    const heel = inputs.find((input) => input.lot === before);
    const name = tank ?? (await this.newTank());
    const others = inputs.filter((input) => input !== heel);
    const amounts = others.length > 0 ? { heel: heel?.amount ?? null, inputs: others } : { heel: null, inputs };
    await this.shop.act(`/api/tanks/${name}/fills`, { code, ...amounts });
    this.inTank.set(name, code);
  }

  private async newTank(): Promise<string> {
    this.tanks += 1;
    const code = this.code(`T${this.tanks}`);
    await this.shop.act('/api/tanks', { code, material: materialOf('resin'), capacityKg: 1_000_000 });
    return code;
  }

  private async use({ part, place, lot, kg: amount }: InventedGenealogy['uses'][number]): Promise<void> {
    const kind = place as Place;
    const joint = this.joints.get(part);
    const used = [{ lot: this.code(lot), amount: kg(amount) }];
    if (kind === 'joint-1' && joint) await this.shop.act(`/api/joints/${joint}/used`, { used });
    else if (kind === 'repair-1') await this.shop.act(`/api/repairs/${await this.repair(part)}/used`, { used });
    else await this.shop.act(`/api/layers/${await this.layer(part, kind)}/used`, { used });
  }

  private async layer(part: string, place: Place): Promise<string> {
    const key = `${part}/${place}`;
    const known = this.places.get(key) ?? (await this.shop.layer('', PLACES[place], [], { part: this.code(part) }));
    this.places.set(key, known);
    return known;
  }

  private async repair(part: string): Promise<string> {
    const known = this.places.get(`${part}/repair`);
    if (known) return known;
    const place = { surface: 'shell', side: 'port', fromTransomMm: 500, girthMm: 300 };
    const defect = await this.shop.act(`/api/parts/${this.code(part)}/defects`, { kind: 'dry-spot', place });
    const done = { defects: [defect], procedure: 'Ground out and laid up.', doneBy: ['PAT-1'] };
    const repair = await this.shop.act(`/api/parts/${this.code(part)}/repairs`, done);
    this.places.set(`${part}/repair`, repair);
    return repair;
  }
}
