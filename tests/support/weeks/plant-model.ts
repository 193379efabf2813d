import { Times } from './times.js';

/** From what something is drawn. */
export type Source = { readonly lot: string } | { readonly tank: true } | { readonly gun: true };

/** Roles of the invented materials. */
export type Role = 'resin' | 'catalyst' | 'glass';

export interface ModelLot {
  readonly code: string;
  /** Of a received lot; a made lot has the roles of what it is made of. */
  readonly role?: Role;
  /** Kilograms received; a made lot weighs what went into it. */
  readonly kg?: number;
  readonly kind: 'received' | 'bucket' | 'kit' | 'fill';
  at: number;
  /** Of a fill: what was measured in the tank before; null when it was empty. */
  readonly heelKg?: number | null;
}

/** Something drawn into a place of a part, or into a lot that is made. */
export interface ModelDraw {
  readonly root: string;
  readonly table: 'used' | 'lot_input';
  at: number;
  from: Source;
  kg: number;
  /** Id of a place, or code of a made lot. */
  into: string;
}

export interface ModelHookUp {
  id: string;
  at: number;
  readonly to: { readonly lot: string } | { readonly tank: true } | null;
}

/** A layer, joint, repair or touch-up. */
export interface ModelPlace {
  readonly id: string;
  readonly kind: 'layer' | 'joint' | 'repair' | 'touch-up';
  readonly part: string;
  /** Of a layer: its code. */
  readonly layer?: string;
  readonly startedAt: number;
  readonly endedAt: number;
}

export interface ModelState {
  readonly lot: string;
  readonly at: number;
  readonly state: string;
}

/**
 * A small plant in memory: lots, one tank, one gun, parts and hulls. It keeps what is known now and nothing of the order
 * in which it came to be known; everything else is worked out from that. Kilograms are whole, so that sums are exact.
 */
export class PlantModel {
  lots: ModelLot[] = [];
  draws: ModelDraw[] = [];
  hookUps: ModelHookUp[] = [];
  places: ModelPlace[] = [];
  losses: { readonly lot: string; readonly at: number; readonly kg: number }[] = [];
  counts: { readonly lot: string; readonly at: number; readonly kg: number }[] = [];
  states: ModelState[] = [];
  /** Hull of each part that is in one. */
  readonly hullOf = new Map<string, string>();
  /** The story so far, in sentences. */
  readonly story: string[] = [];
  readonly times = new Times(this);

  /** @param hulls those begun, each with its hull molding in it */
  constructor(hulls: readonly string[]) {
    for (const hull of hulls) this.hullOf.set(`${hull}-H`, hull);
  }

  get fills(): readonly ModelLot[] {
    return this.lots.filter(({ kind }) => kind === 'fill');
  }

  lot(code: string): ModelLot | undefined {
    return this.lots.find((lot) => lot.code === code);
  }

  /** Lots that can be named by those who draw at an instant: what had come or was made by then. A tank is named itself. */
  lotsBy(at: number): readonly string[] {
    return this.lots.filter((lot) => lot.kind !== 'fill' && lot.at <= at).map(({ code }) => code);
  }

  /** Whether anything names a lot, so that it cannot be withdrawn. What was drawn from the tank names the tank. */
  isNamed(code: string): boolean {
    return this.draws.some(({ from }) => 'lot' in from && from.lot === code);
  }

  /** Forgets a lot that never was, with all that was said of it. */
  forgetLot(code: string): void {
    this.lots = this.lots.filter((lot) => lot.code !== code);
    this.draws = this.draws.filter(({ into }) => into !== code);
    this.losses = this.losses.filter(({ lot }) => lot !== code);
    this.counts = this.counts.filter(({ lot }) => lot !== code);
    this.states = this.states.filter(({ lot }) => lot !== code);
  }

  /** Forgets a place that never was, with what was used in it. */
  forgetPlace(place: ModelPlace): void {
    this.places = this.places.filter((each) => each !== place);
    this.draws = this.draws.filter(({ into }) => into !== place.id);
    if (place.kind === 'joint') this.hullOf.delete(place.part);
  }
}
