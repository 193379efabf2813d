import { NumberInvalid, requireFinite, requirePositive } from '../numbers.js';

/** Masses of a burn-off, g: crucible, crucible with specimen, crucible with residue. */
export interface BurnOff {
  readonly crucibleG: number;
  readonly withSpecimenG: number;
  readonly withResidueG: number;
}

/** Method A is for laminate without mineral filler, B for filled, whose residue is glass and filler (ISO 1172:2023). */
export type BurnOffMethod = 'A' | 'B';

/**
 * Glass content, per cent by mass, by method A: (m3 - m1) / (m2 - m1) x 100 (ISO 1172; formula from memory).
 *
 * By method B the residue is glass and filler together; the glass is weighed apart: give its mass. Putty or gel coat
 * left on the specimen makes method A read high, so the method is part of the record. Throws NumberInvalid.
 */
export const glassPercent = (masses: BurnOff, method: BurnOffMethod, glassG?: number): number => {
  const specimen = requirePositive('specimen', masses.withSpecimenG - requirePositive('crucible', masses.crucibleG));
  const residue = requireFinite('residue', masses.withResidueG - masses.crucibleG);
  const glass = requireFinite('glass', method === 'A' ? residue : (glassG ?? NaN));
  if (glass > residue) throw new NumberInvalid('glass', glass, `at most the residue, ${residue} g`);
  return percentOf(glass, specimen);
};

/** Ignition loss, per cent: what burned of the specimen (ASTM D2584, 565 C; formula from memory). */
export const ignitionLossPercent = ({ crucibleG, withSpecimenG, withResidueG }: BurnOff): number =>
  percentOf(
    withSpecimenG - withResidueG,
    requirePositive('specimen', withSpecimenG - requirePositive('crucible', crucibleG)),
  );

const percentOf = (part: number, whole: number): number => {
  if (!(part >= 0 && part <= whole)) throw new NumberInvalid('residue', part, `between 0 and the specimen, ${whole} g`);
  return (part / whole) * 100;
};
