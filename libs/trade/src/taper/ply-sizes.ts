import { stackOf } from '../laminate/stack.js';
import { laminatePly, type Ply } from '../laminate/ply.js';
import { patchOf, type Damage, type Patch } from './taper.js';

/** One ply of a patch: its size and the material it takes. */
export interface PatchPly extends Omit<Patch, 'taperMm'> {
  readonly glassKg: number;
  readonly resinKg: number;
}

/** A patch ply by ply, from the bottom of the grind-out, with sums. */
export interface PatchPlan {
  readonly plies: readonly PatchPly[];
  readonly thicknessMm: number;
  readonly glassKg: number;
  readonly resinKg: number;
}

/**
 * Sizes the plies of a patch: each covers the damage and the taper up to its own top.
 *
 * The plies are given from the bottom; whether the smallest or the largest is laid first is disputed and stays with the
 * approved procedure. No waste is added. Throws NumberInvalid, StackEmpty.
 */
export const plySizes = (damage: Damage, plies: readonly Ply[], ratio: number): PatchPlan => {
  const { thicknessMm } = stackOf(plies);
  const sized = plies.map((ply, i): PatchPly => {
    const top = stackOf(plies.slice(0, i + 1)).thicknessMm;
    const { taperMm: _taper, ...size } = patchOf(damage, top, ratio);
    const areaM2 = size.areaMm2 / 1e6;
    const { resinKgPerM2 } = laminatePly(ply);
    return { ...size, glassKg: ply.arealMassKgPerM2 * areaM2, resinKg: resinKgPerM2 * areaM2 };
  });
  const sum = (of: (ply: PatchPly) => number): number => sized.reduce((total, ply) => total + of(ply), 0);
  return { plies: sized, thicknessMm, glassKg: sum((ply) => ply.glassKg), resinKg: sum((ply) => ply.resinKg) };
};
