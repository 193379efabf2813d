import { BASES, type Basis } from '@hull-record/trade';

/** Place of a basis from strongest (0) to weakest. */
export const weaknessOf = (basis: string): number => BASES.indexOf(basis as Basis);

/** The basis of that weakness. */
export const basisOf = (weakness: number): Basis => BASES[weakness] ?? 'as scheduled';
