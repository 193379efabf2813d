import type { DemoHull } from './parts.js';
import { partOf } from './parts.js';
import { QUALITY, WARRANTY } from './people.js';
import { MODELS } from './models.js';
import { somewhere } from './places.js';
import { draft, type Draft } from './step.js';
import { instant } from './working-days.js';

/** Hulls, by their index, that come back with blisters: most had much of the bad lot in their skin coat, the last had none. */
export const BLISTERED = [42, 44, 45, 46, 51, 58, 97] as const;

const GRADES = ['6M', '4F', '6MD', '6F', '4M', '6M', '8F'] as const;

/** Working days of the reports: the boats had lain in the water for a season. */
const DAYS = [318, 325, 331, 340, 347, 355, 371] as const;

/** Blisters under the waterline, reported by dealers at haul-out, months after the boats were sold. */
export const blistersOf = (hull: DemoHull): readonly Draft[] => {
  const nth = (BLISTERED as readonly number[]).indexOf(hull.index);
  if (nth < 0) return [];
  const part = partOf(hull, 'hull molding');
  const at = instant(DAYS[nth] ?? 0, '09:40');
  return [
    draft(
      'fileClaim',
      { name: `hull ${hull.number} blistered`, at, by: WARRANTY, of: hull.number },
      {
        ...{ kind: 'blister', grade: GRADES[nth], looks: 'irregular', reportedOn: at.slice(0, 10), hoursAshore: 48 },
        symptoms: 'Blisters on the bottom, both sides; reported by the dealer at haul-out.',
        spots: [
          {
            ...{ part: part.number, layer: 'H2' },
            place: somewhere(hull.model.skins[part.kind], hull.random, 'waterlineGirthMm'),
            ...{ lengthMm: 6 + 2 * nth, widthMm: 5 + nth, counted: 14 + 3 * nth, countedAreaM2: 0.5 },
            note: 'Reported by the dealer at haul-out; seen on the bottom, both sides.',
          },
        ],
      },
    ),
  ];
};

/** Code of the case of the demo. */
export const BLISTER_CASE = 'BLISTERS';

/** Warranty terms of every model; invented. */
export const warrantyTerms = (): readonly Draft[] =>
  MODELS.map(({ code }) =>
    draft(
      'setWarrantyTerms',
      { name: `warranty terms of ${code}`, at: instant(0, '11:00'), by: WARRANTY, of: code },
      {
        ...{ fromModelYear: 2024, toModelYear: 2027, starts: ['warranty registered', 'sold to first purchaser'] },
        covers: [{ kinds: ['blister'], years: 5, bearsPercent: [100, 100, 75, 50, 25] }, { years: 1 }],
        ...{ transfer: { carries: true, untilYears: 3 }, exclusions: ['Damage by grounding'], reason: 'Demo terms.' },
      },
    ),
  );

/** The case that quality opens when the last of the claims is in: frozen, and not looked at yet. */
export const blisterCase = (day: number): readonly Draft[] => [
  draft(
    'openCase',
    { name: 'case of the blisters', at: instant(day, '10:00'), by: QUALITY },
    { code: BLISTER_CASE, title: 'Blisters reported at haul-out' },
  ),
  draft(
    'freezeCase',
    { name: 'case of the blisters frozen', at: instant(day, '10:20'), by: QUALITY, of: BLISTER_CASE },
    {
      ...{ kind: 'blister', reportLagDays: 0, seed: 374, strata: ['model'] },
      reason:
        'Dealers report on the day: nothing is on its way. Two hulls are begun a week, so that quarters of each model would hold six hulls, and a lot nearly all of them: compared within models.',
    },
  ),
];
