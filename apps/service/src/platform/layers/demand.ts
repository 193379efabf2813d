import type { Laminate, LayerDemand, ScheduleLayer } from '@hull-record/contracts';
import { stackOf, toSi, type Ply } from '@hull-record/trade';

/** Where figures of a laminate come from. */
export const FIRST_PRINCIPLES =
  'Masses and densities of its parts (glass 2.56, cured polyester 1.20 kg/L); ISO 12215-5 Annex C has the same form (from memory).';

/** The plies of a laminate in kg/m2. */
export const pliesOf = ({ plies }: Laminate): readonly Ply[] =>
  plies.map(({ arealMass, fibreMassFraction }) => ({
    arealMassKgPerM2: toSi(arealMass.value, arealMass.unit),
    fibreMassFraction,
  }));

/** What a layer takes and becomes by its schedule; null when the schedule names no plies of known areal mass. */
export const demandOf = ({ areaM2, laminate }: Pick<ScheduleLayer, 'areaM2' | 'laminate'>): LayerDemand | null => {
  if (!laminate) return null;
  const stack = stackOf(pliesOf(laminate));
  return {
    thicknessMm: stack.thicknessMm,
    massKgPerM2: stack.massKgPerM2,
    fibreMassFraction: stack.fibreMassFraction,
    glassKg: areaM2 === undefined ? null : areaM2 * stack.glassKgPerM2,
    resinKg: areaM2 === undefined ? null : areaM2 * stack.resinKgPerM2,
    source: FIRST_PRINCIPLES,
  };
};
