import { isBelow } from '../numbers.js';
import { LEAST_TAPER_RATIO, taperRatio } from './taper.js';

/** A structural repair as planned or done. Lengths mm. */
export interface PlannedRepair {
  readonly originalMm: number;
  readonly damageDepthMm: number;
  readonly taperMm: number;
  readonly patchMm: number;
  /** Of a cored panel: each skin is a laminate of its own and is tapered for itself. */
  readonly skin?: 'outer' | 'inner';
  /** Through damage may be tapered from one side or, at half the depth each, from both. */
  readonly sides?: 'one' | 'both';
}

export interface RepairFinding {
  readonly rule: 'taper too short' | 'thickness differs' | 'deeper than the laminate' | 'cannot be judged';
  readonly detail: string;
}

/** How deep damage goes: two words for the two cases that are repaired differently (E. Greene, Marine Composites, ch. 5). */
export const damageDepth = (damageDepthMm: number, originalMm: number): 'partially-through' | 'through-thickness' =>
  damageDepthMm >= originalMm ? 'through-thickness' : 'partially-through';

/** A patch may differ so far from the laminate it replaces, as a fraction (common practice). */
const THICKNESS_TOLERANCE = 0.1;

/**
 * Checks a repair: taper at least the ratio asked of the depth ground, patch as thick as what it replaces.
 *
 * Patch equal to the original and 12:1 at least: resin maker, Epoxyworks 38. Findings are flags for the approver of the
 * procedure; a licensed or qualified person decides on structure.
 */
export const checkRepair = (
  repair: PlannedRepair,
  leastRatio: number = LEAST_TAPER_RATIO,
): readonly RepairFinding[] => {
  const { originalMm, damageDepthMm, taperMm, patchMm, sides = 'one' } = repair;
  const sound = [originalMm, damageDepthMm, patchMm, leastRatio].every((mm) => Number.isFinite(mm) && mm > 0);
  if (!sound || !(taperMm >= 0) || !Number.isFinite(taperMm))
    return [{ rule: 'cannot be judged', detail: 'Thickness, depth, taper and patch must be numbers above zero.' }];
  if (damageDepthMm > originalMm)
    return [{ rule: 'deeper than the laminate', detail: `${damageDepthMm} mm deep in ${originalMm} mm.` }];
  const findings: RepairFinding[] = [];
  const ratio = taperRatio(taperMm, sides === 'both' ? damageDepthMm / 2 : damageDepthMm);
  if (isBelow(ratio, leastRatio))
    findings.push({ rule: 'taper too short', detail: `${ratio.toFixed(2)}:1 where ${leastRatio}:1 is asked.` });
  if (isBelow(THICKNESS_TOLERANCE, Math.abs(patchMm / damageDepthMm - 1)))
    findings.push({ rule: 'thickness differs', detail: `A patch of ${patchMm} mm replaces ${damageDepthMm} mm.` });
  return findings;
};
