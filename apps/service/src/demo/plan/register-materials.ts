import { MATERIALS, materialOf, type MaterialCode } from './materials.js';
import { QUALITY } from './people.js';
import { draft, type Draft } from './step.js';
import { TANKS } from './tanks.js';
import { instant } from './working-days.js';

const at = instant(0, '06:20');

/** Materials with their makers' data, the bulk tanks, and by which rules the plant judges. */
export const materialsAndTanks = (): readonly Draft[] => [
  draft(
    'setPlantRules',
    { name: 'plant rules', at, by: QUALITY },
    { marginRule: '3 C', shopWindow: null, barcolFraction: 0.9, reason: 'Invented for the demo.' },
  ),
  ...(Object.keys(MATERIALS) as MaterialCode[]).map(registered),
  ...Object.entries(TANKS).map(([code, { material, capacityKg }]) =>
    draft('registerTank', { name: `tank ${code}`, at, by: QUALITY }, { code, material, capacityKg }),
  ),
];

/** Less catalyst in a warm shop; invented. */
const DOSING = [
  { temperature: { value: 16, unit: 'C' as const }, percentByMass: 2.2 },
  { temperature: { value: 22, unit: 'C' as const }, percentByMass: 1.8 },
  { temperature: { value: 28, unit: 'C' as const }, percentByMass: 1.4 },
];

const registered = (code: MaterialCode): Draft => {
  const { name, role, supplier, lot: _lot, minimumBarcol, catalystWindow, ...conversions } = materialOf(code);
  const makerData = {
    dataSheet: 'Invented for the demo; the data sheet of the real material rules',
    ...(minimumBarcol === undefined ? {} : { minimumBarcol }),
    ...(role === 'resin' ? { dosing: DOSING } : {}),
    ...(catalystWindow === undefined
      ? {}
      : { catalystWindow: { min: catalystWindow[0], max: catalystWindow[1], unit: '%' as const } }),
  };
  const maker = { maker: supplier, lossAllowance: role === 'glass' || role === 'core' ? 0.08 : 0.03, makerData };
  return draft(
    'registerMaterial',
    { name: `material ${code}`, at, by: QUALITY },
    { code, name, role, ...conversions, ...maker },
  );
};
