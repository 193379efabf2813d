import type { MaterialCode } from './materials.js';

/** The bulk tanks: which material, how much they may hold, and how far they are filled. */
export const TANKS = {
  T1: { material: 'VE', capacityKg: 360, fullKg: 300 },
  T2: { material: 'PE', capacityKg: 520, fullKg: 440 },
} as const satisfies Readonly<
  Record<string, { readonly material: MaterialCode; readonly capacityKg: number; readonly fullKg: number }>
>;

export type TankCode = keyof typeof TANKS;

/** The tank from which a material is sprayed, when it has one. */
export const TANK_OF: Partial<Record<MaterialCode, TankCode>> = { VE: 'T1', PE: 'T2' };
