import type { DemoHull } from './parts.js';
import { partOf } from './parts.js';
import { WARRANTY } from './people.js';
import { somewhere } from './places.js';
import { draft, type Draft } from './step.js';
import { instant } from './working-days.js';

/** Hulls, by their index, that come back with blisters; all had the bad lot in their skin coat. */
export const BLISTERED = [4, 5, 6] as const;

const GRADES = ['6M', '4F', '6MD'] as const;
const DAYS = [66, 70, 76] as const;

/** Blisters under the waterline, reported by dealers in August, weeks after the boats were sold. */
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
        ...{ lengthMm: 900, widthMm: 420, note: 'Reported by the dealer at haul-out; seen on the bottom, both sides.' },
      },
    ),
  ];
};
