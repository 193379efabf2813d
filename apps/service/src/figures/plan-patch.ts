import type { PatchPlanView, PlanPatch } from '@hull-record/contracts';
import {
  CAUTIONS,
  checkRepair,
  damageDepth,
  isSurfaceDamage,
  patchOf,
  plySizes,
  taperDegrees,
  toSi,
} from '@hull-record/trade';
import { FIRST_PRINCIPLES } from '../platform/layers/demand.js';

const SOURCES = [
  'Taper: a resin maker asks at least 12:1 and a patch as thick as the original (Epoxyworks 38).',
  'Damage by depth: E. Greene, Marine Composites, ch. 5.',
  `Plies: ${FIRST_PRINCIPLES}`,
];

/**
 * Sizes a planned repair and says what is wrong with it. From both sides half of the depth is ground on each, and each
 * side takes the plies named.
 */
export const planPatch = ({ damage, plies, taperRatio, ...planned }: PlanPatch): PatchPlanView => {
  const { originalMm, damageDepthMm, sides, skin } = planned;
  const both = sides === 'both' ? 2 : 1;
  const depth = damageDepth(damageDepthMm, originalMm);
  const ground = depth === 'through-thickness' ? originalMm : damageDepthMm;
  const { taperMm, ...grindOut } = patchOf(damage, ground / both, taperRatio);
  const sized = plySizes(
    damage,
    plies.map(({ arealMass: { value, unit }, fibreMassFraction }) => ({
      arealMassKgPerM2: toSi(value, unit),
      fibreMassFraction,
    })),
    taperRatio,
  );
  const patchMm = sized.thicknessMm * both;
  const findings = checkRepair({
    ...{ originalMm, damageDepthMm, taperMm, patchMm, sides },
    ...(skin === undefined ? {} : { skin }),
  });
  return {
    ...{ depth, taperMm, taperDegrees: taperDegrees(taperRatio), grindOut, sides, patchMm },
    surfaceOnly: depth === 'partially-through' && isSurfaceDamage(damageDepthMm, 'mm'),
    plies: [...sized.plies],
    glassKg: sized.glassKg * both,
    resinKg: sized.resinKg * both,
    findings: [...findings],
    sources: SOURCES,
    cautions: [...CAUTIONS.repair],
  };
};
