import { z } from 'zod';
import * as trade from '@hull-record/trade';
import { anyNumber, check } from '../check.js';

const ply = z.strictObject({ arealMassKgPerM2: anyNumber, fibreMassFraction: anyNumber });
const densities = z.strictObject({ fibre: anyNumber, resin: anyNumber }).optional();
const masses = { crucibleG: anyNumber, withSpecimenG: anyNumber, withResidueG: anyNumber };
const damage = z.union([
  z.strictObject({ diameterMm: anyNumber }),
  z.strictObject({ lengthMm: anyNumber, widthMm: anyNumber }),
]);

/** Checks of laminate, hardness and repair. */
export const LAMINATE = {
  'laminate.ply': check('laminate', 'thickness, resin and mass of one ply', { ply, densities }, (given) =>
    trade.laminatePly(given.ply, given.densities),
  ),
  'laminate.thickness': check('laminate', 'a whole stack', { plies: z.array(ply), densities }, (given) =>
    trade.stackOf(given.plies, given.densities),
  ),
  'laminate.fibreFraction': check(
    'laminate',
    'fibre mass fraction of a measured thickness',
    { arealMassKgPerM2: anyNumber, thicknessMm: anyNumber, densities },
    (given) => trade.fibreFractionOf(given.arealMassKgPerM2, given.thicknessMm, given.densities),
  ),
  'laminate.fibreVolume': check(
    'laminate',
    'fibre volume fraction of a mass fraction',
    { fibreMassFraction: anyNumber },
    (given) => trade.fibreVolumeFraction(given.fibreMassFraction),
  ),
  'laminate.burnOff': check(
    'laminate',
    'glass per cent by ISO 1172',
    { ...masses, method: z.enum(['A', 'B']), glassG: anyNumber.optional() },
    ({ method, glassG, ...weighed }) => trade.glassPercent(weighed, method, glassG),
  ),
  'laminate.ignitionLoss': check('laminate', 'ignition loss per cent by ASTM D2584', masses, (given) =>
    trade.ignitionLossPercent(given),
  ),
  'laminate.judgeThickness': check(
    'laminate',
    'measured points against the thickness expected',
    { points: z.array(anyNumber), expectedMm: anyNumber, tolerance: anyNumber },
    (given) => trade.judgeThickness(given.points, given.expectedMm, given.tolerance),
  ),
  'laminate.glassAgainstSchedule': check(
    'laminate',
    'glass used over (or under) the schedule, as a fraction',
    { usedKg: anyNumber, areaM2: anyNumber, scheduledKgPerM2: anyNumber },
    (given) => trade.glassAgainstSchedule(given.usedKg, given.areaM2, given.scheduledKgPerM2),
  ),
  'hardness.judge': check(
    'hardness',
    'Barcol readings against the minimum of the resin',
    {
      values: z.array(anyNumber),
      side: z.enum(['gel coat', 'laminate']).default('laminate'),
      minimum: anyNumber,
      fraction: anyNumber.default(0.9),
      temperatureC: anyNumber.optional(),
      thicknessMm: anyNumber.optional(),
    },
    ({ minimum, fraction, ...readings }) => trade.judgeBarcol(readings, { minimum, fraction, source: 'as given' }),
  ),
  'hardness.readingsWanted': check(
    'hardness',
    'readings that the table of ASTM D2583 asks (from memory)',
    { hardness: anyNumber, material: z.enum(['reinforced', 'homogeneous']) },
    (given) => trade.readingsWanted(given.hardness, given.material),
  ),
  'repair.taper': check(
    'repair',
    'length and angle of a taper',
    { thickness: anyNumber, ratio: anyNumber },
    (given) => ({
      length: trade.taperLength(given.thickness, given.ratio),
      degrees: trade.taperDegrees(given.ratio),
    }),
  ),
  'repair.patch': check(
    'repair',
    'the patch of a damage',
    { damage, thicknessMm: anyNumber, ratio: anyNumber },
    (given) => trade.patchOf(given.damage, given.thicknessMm, given.ratio),
  ),
  'repair.plies': check(
    'repair',
    'plies of a patch, from the bottom',
    { damage, plies: z.array(ply), ratio: anyNumber },
    (given) => trade.plySizes(given.damage, given.plies, given.ratio),
  ),
  'repair.check': check(
    'repair',
    'what is wrong with a repair',
    {
      originalMm: anyNumber,
      damageDepthMm: anyNumber,
      taperMm: anyNumber,
      patchMm: anyNumber,
      sides: z.enum(['one', 'both']).default('one'),
      leastRatio: anyNumber.optional(),
    },
    ({ leastRatio, ...repair }) => trade.checkRepair(repair, leastRatio).map((finding) => finding.rule),
  ),
  'repair.depth': check(
    'repair',
    'partially-through or through',
    { damageDepthMm: anyNumber, originalMm: anyNumber },
    (given) => trade.damageDepth(given.damageDepthMm, given.originalMm),
  ),
} as const;
