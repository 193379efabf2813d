import type { Amount } from '@hull-record/contracts';
import { toKilograms, type MaterialRole, type UnitCode } from '@hull-record/trade';

/** A material of the demo and how the store buys it. Every value is invented, in the range that is usual in the trade. */
export interface DemoMaterial {
  readonly name: string;
  readonly role: MaterialRole;
  readonly supplier: string;
  /** What one lot brings, as the store counts it. */
  readonly lot: { readonly quantity: number; readonly unit: UnitCode };
  readonly densityKgPerL?: number;
  readonly arealMassKgPerM2?: number;
  readonly pieceMassKg?: number;
  readonly shelfLifeDays?: number;
  readonly minimumBarcol?: number;
  /** Percent of the resin by mass. */
  readonly catalystWindow?: readonly [min: number, max: number];
}

const RESINS = 'Aldermoor Resins';
const GLASS = 'Tessel Glass';
const CORES = 'Hollin Core';
const PASTES = 'Fenwright Pastes';

const kg = (quantity: number) => ({ quantity, unit: 'kg' as const });
const m2 = (quantity: number) => ({ quantity, unit: 'm2' as const });
const pc = (quantity: number) => ({ quantity, unit: 'pc' as const });
const L = (quantity: number) => ({ quantity, unit: 'L' as const });

const coat = (name: string, quantity: number): DemoMaterial => ({
  ...{ name, role: 'gel coat', supplier: RESINS, lot: kg(quantity) },
  ...{ densityKgPerL: 1.28, shelfLifeDays: 120, catalystWindow: [1.4, 2.2] },
});
const resin = (name: string, quantity: number, shelfLifeDays: number, minimumBarcol: number): DemoMaterial => ({
  ...{ name, role: 'resin', supplier: RESINS, lot: kg(quantity) },
  ...{ densityKgPerL: 1.1, shelfLifeDays, minimumBarcol, catalystWindow: [1.2, 2.4] },
});
const glass = (name: string, arealMassKgPerM2: number, quantity: number): DemoMaterial => ({
  ...{ name, role: 'glass', supplier: GLASS, lot: m2(quantity), arealMassKgPerM2 },
});
const core = (name: string, arealMassKgPerM2: number, quantity: number): DemoMaterial => ({
  ...{ name, role: 'core', supplier: CORES, lot: m2(quantity), arealMassKgPerM2 },
});
const board = (name: string, pieceMassKg: number, quantity: number): DemoMaterial => ({
  ...{ name, role: 'board', supplier: CORES, lot: pc(quantity), pieceMassKg },
});
const paste = (name: string, role: MaterialRole, quantity: number): DemoMaterial => ({
  ...{ name, role, supplier: PASTES, lot: kg(quantity), densityKgPerL: 1.35, shelfLifeDays: 150 },
});
const liquid = (name: string, role: MaterialRole, litres: number, densityKgPerL: number): DemoMaterial => ({
  ...{ name, role, supplier: RESINS, lot: L(litres), densityKgPerL, shelfLifeDays: 270 },
});

/** Every material of the demo, by its code. */
export const MATERIALS = {
  'GEL-W': coat('Isophthalic gel coat, white 02', 320),
  'GEL-N': coat('Isophthalic gel coat, navy 21', 160),
  'FLOW-G': coat('Flow coat, grey 11', 240),
  VE: resin('Vinyl ester resin, skin coat', 450, 120, 36),
  PE: resin('Isophthalic polyester resin', 900, 150, 38),
  'CAT-M': liquid('Peroxide catalyst for resins (MEKP)', 'catalyst', 30, 1.12),
  'CAT-G': liquid('Peroxide catalyst for gel coats (MEKP)', 'catalyst', 10, 1.16),
  'PRO-C': liquid('Cobalt promoter, 6 %', 'promoter', 10, 0.94),
  'INH-H': liquid('Inhibitor solution', 'inhibitor', 5, 1.02),
  'PIG-G': paste('Pigment paste, grey 11', 'pigment', 12),
  'MAT-300': glass('Chopped strand mat 300 g/m2', 0.3, 1100),
  'MAT-450': glass('Chopped strand mat 450 g/m2', 0.45, 560),
  'STI-700': glass('Stitched biaxial 700 g/m2', 0.7, 760),
  'STI-900': glass('Stitched triaxial 900 g/m2', 0.9, 420),
  'ROV-24': { name: 'Chopper roving 2400 tex', role: 'glass', supplier: GLASS, lot: kg(220) },
  'VEIL-30': glass('Surface veil 30 g/m2', 0.03, 400),
  'COR-15': core('PVC core 80 kg/m3, 15 mm', 1.2, 320),
  'COR-20': core('PVC core 80 kg/m3, 20 mm', 1.6, 210),
  'BRD-50': board('Composite board 50 mm, transom blank', 21, 20),
  'BRD-20': board('Composite board 20 mm, backing', 6, 20),
  'PUT-S': paste('Polyester putty for strakes', 'putty', 90),
  'PUT-C': paste('Core bonding putty', 'putty', 320),
  'PUT-F': paste('Fairing putty', 'putty', 20),
  'PST-G': paste('Bonding paste for stringer grids', 'bonding paste', 100),
  'PST-D': paste('Bonding paste for hull and deck', 'bonding paste', 100),
  'REL-W': { ...liquid('Mold release, semi-permanent', 'release', 20, 0.75) },
} as const satisfies Readonly<Record<string, DemoMaterial>>;

export type MaterialCode = keyof typeof MATERIALS;

export const materialOf = (code: MaterialCode): DemoMaterial => MATERIALS[code];

/** Kilograms of an amount of a material, by its invented data. */
export const kilogramsOf = (code: MaterialCode, { quantity, unit }: Pick<Amount, 'quantity' | 'unit'>): number => {
  const mass = toKilograms(Number(quantity), unit, materialOf(code));
  if ('missing' in mass) throw new Error(`The demo has no ${mass.missing} for ${code} in ${unit}.`);
  return mass.kg;
};
