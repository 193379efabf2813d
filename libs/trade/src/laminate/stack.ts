import { TradeError } from '../errors.js';
import { GLASS_AND_POLYESTER, laminatePly, type Densities, type Ply } from './ply.js';

/** A stack without plies is no laminate. */
export class StackEmpty extends TradeError {
  readonly code = 'stack-empty';
}

/** A whole laminate, gel coat not included. Thickness mm, masses kg/m2. */
export interface Stack {
  readonly thicknessMm: number;
  readonly glassKgPerM2: number;
  readonly resinKgPerM2: number;
  readonly massKgPerM2: number;
  readonly fibreMassFraction: number;
}

/** Adds plies up: thickness and masses are sums, and the fibre fraction is glass over all. Throws StackEmpty. */
export const stackOf = (plies: readonly Ply[], densities: Densities = GLASS_AND_POLYESTER): Stack => {
  if (plies.length === 0) throw new StackEmpty('Name at least one ply.', {});
  const laminated = plies.map((ply) => laminatePly(ply, densities));
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const glassKgPerM2 = sum(plies.map((ply) => ply.arealMassKgPerM2));
  const massKgPerM2 = sum(laminated.map((ply) => ply.massKgPerM2));
  return {
    thicknessMm: sum(laminated.map((ply) => ply.thicknessMm)),
    glassKgPerM2,
    resinKgPerM2: sum(laminated.map((ply) => ply.resinKgPerM2)),
    massKgPerM2,
    fibreMassFraction: glassKgPerM2 / massKgPerM2,
  };
};
