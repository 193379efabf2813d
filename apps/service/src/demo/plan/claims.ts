import type { DemoHull } from './parts.js';
import { partOf } from './parts.js';
import { WARRANTY } from './people.js';
import { somewhere } from './places.js';
import { draft, type Draft } from './step.js';
import { instant } from './working-days.js';

/** Hulls, by their index, that come back with blisters: most had the bad lot in their skin coat, the last had none. */
export const BLISTERED = [41, 42, 43, 44, 45, 46, 97] as const;

const GRADES = ['6M', '4F', '6MD', '6F', '4M', '6M', '8F'] as const;

/** Working days of the reports: the boats had lain in the water for a season. */
const DAYS = [318, 325, 331, 340, 347, 355, 371] as const;

/** Blisters under the waterline, reported by dealers at haul-out, months after the boats were sold. */
export const blistersOf = (hull: DemoHull): readonly Draft[] => {
  const nth = (BLISTERED as readonly number[]).indexOf(hull.index);
  if (nth < 0) return [];
  const part = partOf(hull, 'hull molding');
  return [
    draft(
      'reportDefect',
      { name: `hull ${hull.number} blistered`, at: instant(DAYS[nth] ?? 0, '09:40'), by: WARRANTY, of: part.number },
      {
        ...{ kind: 'blister', layer: 'H2', grade: GRADES[nth] },
        ...{ place: somewhere(hull.model.skins[part.kind], hull.random, 'waterlineGirthMm') },
        ...{ lengthMm: 6 + 2 * nth, widthMm: 5 + nth, counted: 14 + 3 * nth, countedAreaM2: 0.5 },
        ...{ note: 'Reported by the dealer at haul-out; seen on the bottom, both sides.' },
      },
    ),
  ];
};
