import type { MaterialCode } from './materials.js';
import type { TankCode } from './tanks.js';

/** A spray gun of the demo: what it sprays, from which tank when it has one, and how much of which catalyst it adds. */
export interface DemoGun {
  readonly description: string;
  readonly material: MaterialCode;
  readonly tank?: TankCode;
  readonly catalyst: MaterialCode;
  readonly catalystPercent: number;
}

/** The three guns of the demo. */
export const GUNS = {
  'GUN-1': {
    ...{ description: 'Demo resin gun at the skin coat tank', material: 'VE', tank: 'T1' },
    ...{ catalyst: 'CAT-M', catalystPercent: 1.8 },
  },
  'GUN-2': {
    ...{ description: 'Demo chopper gun at the polyester tank', material: 'PE', tank: 'T2' },
    ...{ catalyst: 'CAT-M', catalystPercent: 1.7 },
  },
  'GUN-3': {
    ...{ description: 'Demo gel coat gun, white', material: 'GEL-W' },
    ...{ catalyst: 'CAT-G', catalystPercent: 1.8 },
  },
} as const satisfies Readonly<Record<string, DemoGun>>;

export type GunCode = keyof typeof GUNS;

/** The gun that sprays a material. */
export const GUN_OF: Partial<Record<MaterialCode, GunCode>> = { VE: 'GUN-1', PE: 'GUN-2', 'GEL-W': 'GUN-3' };
