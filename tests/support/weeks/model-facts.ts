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

/** What is known of a plant now, in no order. */
export interface PlantFacts {
  readonly lots: readonly ModelLot[];
  readonly fills: readonly ModelLot[];
  readonly draws: readonly ModelDraw[];
  readonly hookUps: readonly ModelHookUp[];
  readonly losses: readonly { readonly lot: string; readonly at: number; readonly kg: number }[];
  readonly counts: readonly { readonly lot: string; readonly at: number; readonly kg: number }[];
  readonly states: readonly ModelState[];
  lot(code: string): ModelLot | undefined;
}
