import { amount } from './amounts.js';
import { mix } from './buckets.js';
import type { DemoPart } from './parts.js';
import { INSPECTORS, PATCHERS, QUALITY } from './people.js';
import { draft, type Draft, type Seeded } from './step.js';
import { later } from './working-days.js';

/** Repairs a defect the same morning with resin of the day, and has it accepted by somebody who did not do it. */
export const repair = (demo: Seeded, part: DemoPart, defect: string, at: string): readonly Draft[] => {
  const { random, serial } = part.hull;
  const code = `B-${serial}-R${defect.slice(-1)}`;
  const by = random.pick(PATCHERS);
  const bucket = mix(code, 'VE', random.between(0.4, 0.9), { at: later(at, 25), by, fromTank: true }, random);
  const glass = { material: 'MAT-300', amount: amount(random.between(0.06, 0.3), 'kg') } as const;
  const name = `${defect} repaired`;
  return [
    draft(
      'dispose',
      { name: `${defect} to be repaired`, at: later(at, 15), by: QUALITY },
      { of: 'defect', about: demo.id(defect), disposition: 'repair', reason: 'To be ground out and laid up again.' },
    ),
    bucket.mixed,
    draft('recordRepair', { name, at: later(at, 110), by, of: part.number }, procedure(demo.id(defect), by), [
      bucket.need,
      glass,
    ]),
    draft(
      'judgeRepair',
      { name: `${defect} accepted`, at: later(at, 180), by: random.pick(INSPECTORS), of: demo.id(name) },
      { accepted: true },
    ),
  ];
};

const procedure = (defect: string, by: string) => ({
  defects: [defect],
  procedure:
    'Demo procedure: ground out to sound laminate, wiped, laid up, faired. Data sheet, local codes and licensed or certified practice rule; mask, gloves and extraction in use.',
  ...{ taperRatio: 12, grindOutMm: { lengthMm: 90, widthMm: 70, depthMm: 2 } },
  ...{ plies: ['3 x mat 300 g/m2'], doneBy: [by] },
});
