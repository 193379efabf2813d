import { requireBetween, requirePositive } from '../numbers.js';

/** Densities of glass and cured resin, kg/dm3. */
export interface Densities {
  readonly fibre: number;
  readonly resin: number;
}

/** E-glass and cured polyester; with them t = w / 3.072 (2.56 / psi - 1.36). */
export const GLASS_AND_POLYESTER: Densities = { fibre: 2.56, resin: 1.2 };

/** One ply: its areal mass of dry glass (kg/m2) and its fibre mass fraction psi, 0 to 1. */
export interface Ply {
  readonly arealMassKgPerM2: number;
  readonly fibreMassFraction: number;
}

/** What a ply becomes when laminated. Thickness mm, masses kg/m2, density kg/dm3. */
export interface LaminatedPly {
  readonly thicknessMm: number;
  readonly resinKgPerM2: number;
  readonly massKgPerM2: number;
  readonly fibreVolumeFraction: number;
  readonly density: number;
}

/**
 * Laminates a ply: t = w [1 / rho_f + (1 - psi) / (psi rho_r)], from the masses and densities alone.
 *
 * First principles; ISO 12215-5 Annex C carries the same form (from memory). Throws NumberInvalid.
 */
export const laminatePly = (ply: Ply, densities: Densities = GLASS_AND_POLYESTER): LaminatedPly => {
  const w = requirePositive('areal mass', ply.arealMassKgPerM2);
  const psi = requireBetween('fibre mass fraction', ply.fibreMassFraction, 0, 1);
  const fibre = w / requirePositive('density of fibre', densities.fibre);
  const resinKgPerM2 = (w * (1 - psi)) / psi;
  const thicknessMm = fibre + resinKgPerM2 / requirePositive('density of resin', densities.resin);
  const massKgPerM2 = w + resinKgPerM2;
  return {
    ...{ thicknessMm, resinKgPerM2, massKgPerM2 },
    fibreVolumeFraction: fibre / thicknessMm,
    density: massKgPerM2 / thicknessMm,
  };
};

/**
 * Fibre mass fraction of a laminate from its glass (kg/m2) and its measured thickness (mm), gel coat not included.
 *
 * Inverse of the thickness: psi = rho_f w / (rho_f rho_r t + w (rho_f - rho_r)). Throws NumberInvalid, also when the
 * laminate would be thinner than its glass alone.
 */
export const fibreFractionOf = (
  arealMassKgPerM2: number,
  thicknessMm: number,
  { fibre, resin }: Densities = GLASS_AND_POLYESTER,
): number => {
  const w = requirePositive('areal mass', arealMassKgPerM2);
  const t = requirePositive('thickness', thicknessMm);
  return requireBetween('fibre mass fraction', (fibre * w) / (fibre * resin * t + w * (fibre - resin)), 0, 1);
};

/** Fibre volume fraction of a fibre mass fraction. */
export const fibreVolumeFraction = (psi: number, { fibre, resin }: Densities = GLASS_AND_POLYESTER): number => {
  requireBetween('fibre mass fraction', psi, 0, 1);
  return psi / fibre / (psi / fibre + (1 - psi) / resin);
};

/** Default fibre mass fractions by kind of reinforcement; a plant's own come before them. */
export const DEFAULT_FIBRE_FRACTIONS = {
  source: 'ISO 12215-5:2008 Annex C table (from memory, confirm against the standard)',
  values: { 'chopped strand mat': 0.3, 'woven roving': 0.48, multidirectional: 0.5, unidirectional: 0.55 },
} as const;
