import { glassAgainstSchedule, isBelow, stackOf } from '@hull-record/trade';
import { pliesOf } from '../layers/demand.js';
import type { Found } from '../verdicts/keep-verdict.js';
import type { LayerMade } from './layer-made.js';
import type { MaterialIn } from './materials-in.js';

export const GLASS = 'glass against schedule';

const sum = (materials: readonly MaterialIn[]): number => materials.reduce((total, { kg }) => total + kg, 0);

/** The glass used in a layer against the areal mass of its plies; nothing while no glass, area or plies are known. */
export const judgeGlass = (
  { area_m2: areaM2, laminate, schedule, name }: LayerMade,
  materials: readonly MaterialIn[],
): Found | undefined => {
  const usedKg = sum(materials.filter(({ role }) => role === 'glass'));
  if (areaM2 === null || laminate === null || usedKg === 0) return undefined;
  const { glassKgPerM2, resinKgPerM2 } = stackOf(pliesOf(laminate));
  const over = glassAgainstSchedule(usedKg, areaM2, glassKgPerM2) as number;
  const resinKg = sum(materials.filter(({ role }) => role === 'resin'));
  const scheduledKg = glassKgPerM2 * areaM2;
  const apart = `${Math.abs(over * 100).toFixed(1)} % ${over < 0 ? 'less' : 'more'}`;
  const detail = `${usedKg.toFixed(2)} kg of glass were used; the schedule takes ${scheduledKg.toFixed(2)} kg on ${areaM2} m2: ${apart}. Resin used ${resinKg.toFixed(2)} kg, asked ${(resinKgPerM2 * areaM2).toFixed(2)} kg without waste.`;
  const found = {
    topic: GLASS,
    detail,
    figures: {
      usedKg,
      scheduledKg,
      areaM2,
      scheduledKgPerM2: glassKgPerM2,
      overFraction: over,
      resinUsedKg: resinKg,
      resinScheduledKg: resinKgPerM2 * areaM2,
    },
    rule: `Glass used within ${(laminate.tolerance * 100).toFixed(0)} % of the areal mass of the plies over the area.`,
    source: `Schedule ${schedule}, layer ${name}.`,
  };
  return !isBelow(laminate.tolerance, Math.abs(over))
    ? { ...found, verdict: 'inside' }
    : { ...found, verdict: 'outside', breaks: 'glass-outside-schedule' };
};
