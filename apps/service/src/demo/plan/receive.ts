import type { Amount } from '@hull-record/contracts';
import { amount } from './amounts.js';
import { materialOf, type MaterialCode } from './materials.js';
import { QUALITY, RECEIVING } from './people.js';
import type { Random } from './random.js';
import { draft, type Draft, type Seeded } from './step.js';
import { dayOf, instant, later, workingDayOf } from './working-days.js';

/** What one lot of a material brings. */
export const lotAmount = (material: MaterialCode): Amount => {
  const { lot, role } = materialOf(material);
  return amount(lot.quantity, lot.unit, role === 'glass' || role === 'core' ? 'as scheduled' : 'weighed');
};

/** Receives a lot some days before it is needed; resins and gel coats wait in quarantine until quality releases them. */
export const receive = (demo: Seeded, material: MaterialCode, code: string, neededAt: string): readonly Draft[] => {
  const random = demo.random(`lot ${code}`);
  const day = Math.max(0, workingDayOf(neededAt) - random.whole(2, 5));
  const at = later(instant(day, '08:00'), random.whole(0, 240));
  const tested = ['resin', 'gel coat'].includes(materialOf(material).role);
  const release = draft(
    'changeLotState',
    { name: `lot ${code} released`, at: later(instant(day + 1, '06:10'), random.whole(0, 20)), by: QUALITY, of: code },
    { state: 'released', reason: 'Certificate and gel time of the sample are inside the limits.' },
  );
  return [received(random, material, code, at, !tested), ...(tested ? [release] : [])];
};

const received = (random: Random, material: MaterialCode, code: string, at: string, released: boolean): Draft => {
  const { supplier, role } = materialOf(material);
  const madeOn = dayOf(at, -random.whole(9, 26));
  return draft(
    'receiveLot',
    { name: `lot ${code}`, at, by: RECEIVING },
    {
      ...{ code, material, supplier, supplierLot: supplierLot(supplier, madeOn, random), madeOn },
      ...{ amount: lotAmount(material), state: released ? 'released' : 'quarantined' },
      certificate: certificateOf(role, random),
    },
  );
};

/** An invented lot number: initials of the supplier, the day it was made, a batch of that day. */
const supplierLot = (supplier: string, madeOn: string, random: Random): string => {
  const initials = supplier.replaceAll(/[^A-Z]/g, '');
  return `${initials}-${madeOn.slice(2).replaceAll('-', '')}-${random.whole(1, 9)}`;
};

const certificateOf = (role: string, random: Random): Record<string, string | number> => {
  if (role === 'resin' || role === 'gel coat') {
    return {
      'viscosity at 25 C, mPa s': role === 'resin' ? random.whole(380, 520) : random.whole(14_000, 19_000),
      'gel time at 25 C, min': random.whole(14, 24),
      'styrene, %': Math.round(random.between(34, 44) * 10) / 10,
    };
  }
  return role === 'glass' ? { 'areal mass, % of nominal': random.whole(96, 104) } : { certificate: 'of conformity' };
};
