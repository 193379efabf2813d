import { GUNS } from './guns.js';
import { draft, type Draft } from './step.js';
import { instant } from './working-days.js';

type Role = 'receiving' | 'laminator' | 'shift lead' | 'inspector' | 'patcher' | 'quality' | 'warranty' | 'auditor';

const PEOPLE: readonly (readonly [badge: string, role: Role, name: string])[] = [
  ['REC-01', 'receiving', 'Demo receiving 1'],
  ...[1, 2, 3, 4, 5, 6].map((n) => [`LAM-0${n}`, 'laminator', `Demo laminator ${n}`] as const),
  ...[1, 2].map((n) => [`LAM-1${n}`, 'laminator', `Demo night laminator ${n}`] as const),
  ['LEAD-1', 'shift lead', 'Demo shift lead 1'],
  ['LEAD-2', 'shift lead', 'Demo night lead 2'],
  ['INS-01', 'inspector', 'Demo inspector 1'],
  ['INS-02', 'inspector', 'Demo inspector 2'],
  ['PAT-01', 'patcher', 'Demo patcher 1'],
  ['PAT-02', 'patcher', 'Demo patcher 2'],
  ['QUA-01', 'quality', 'Demo quality engineer 1'],
  ['WAR-01', 'warranty', 'Demo warranty desk 1'],
  ['AUD-01', 'auditor', 'Demo auditor 1'],
];

export const LAMINATORS = PEOPLE.flatMap(([badge]) => (badge.startsWith('LAM-0') ? [badge] : []));
export const NIGHT_CREW = ['LAM-11', 'LAM-12'] as const;
export const NIGHT_LEAD = 'LEAD-2';
export const INSPECTORS = ['INS-01', 'INS-02'] as const;
export const PATCHERS = ['PAT-01', 'PAT-02'] as const;
export const LEAD = 'LEAD-1';
export const QUALITY = 'QUA-01';
export const RECEIVING = 'REC-01';
export const WARRANTY = 'WAR-01';

const DEVICES: readonly (readonly [code: string, description: string])[] = [
  ['TAB-MOLD', 'Demo tablet at the molds'],
  ['TAB-QUAL', 'Demo tablet of the quality station'],
  ['TAB-STORE', 'Demo tablet of the store'],
];

/** Which device a badge uses. */
export const deviceOf = (badge: string): string => {
  if (badge.startsWith('REC')) return 'TAB-STORE';
  if (badge.startsWith('INS') || badge.startsWith('QUA')) return 'TAB-QUAL';
  return badge === 'ADMIN' || badge.startsWith('WAR') ? 'DESK' : 'TAB-MOLD';
};

export const MIL_GAUGE = 'MG-01';
export const BARCOL = 'HB-03';
export const THICKNESS_GAUGE = 'TG-02';

const EQUIPMENT: readonly (readonly [code: string, description: string])[] = [
  ...Object.entries(GUNS).map(([code, { description }]) => [code, description] as const),
  [MIL_GAUGE, 'Demo mil gauge, 1 to 80 mil'],
  [BARCOL, 'Demo Barcol hardness gauge'],
  [THICKNESS_GAUGE, 'Demo thickness caliper'],
];

const kindOf = (code: string): 'gun' | 'gauge' => (code.startsWith('GUN') ? 'gun' : 'gauge');

const at = instant(0, '06:00');

/** People, devices and gauges of the demo; the first administrator registers them. */
export const peopleAndDevices = (): readonly Draft[] => [
  ...PEOPLE.map(([badge, role, name]) =>
    draft('registerPerson', { name: `person ${badge}`, at, by: 'ADMIN' }, { badge, name, roles: [role] }),
  ),
  ...DEVICES.map(([code, description]) =>
    draft(
      'registerDevice',
      { name: `device ${code}`, at, by: 'ADMIN' },
      { code, description, ratedForClassifiedArea: false },
    ),
  ),
  ...EQUIPMENT.map(([code, description]) =>
    draft(
      'registerEquipment',
      { name: `equipment ${code}`, at, by: 'ADMIN' },
      { code, kind: kindOf(code), description },
    ),
  ),
];
