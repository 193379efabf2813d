import type { PartKind } from './models.js';
import { LEAD } from './people.js';
import { draft, type Draft, type Seeded } from './step.js';
import { instant, later } from './working-days.js';

/** The area of the shop in which each kind of part is laminated. */
export const AREA_OF: Readonly<Record<PartKind, string>> = {
  'hull molding': 'HALL-1',
  deck: 'HALL-2',
  'stringer grid': 'HALL-2',
};

/** Weeks before the end of the plan for which the logger of the hull hall was read out. */
const WEEKS = 10;

const week = (demo: Seeded, monday: number): Draft => {
  const random = demo.random(`climate ${monday}`);
  const from = instant(monday, '00:00');
  const points = Array.from({ length: 60 }, (_, i) => ({
    at: later(from, i * 120),
    airTemperature: { value: Math.round((21.4 + random.normal(0, 0.5)) * 10) / 10, unit: 'C' as const },
    relativeHumidity: { value: Math.round(57 + random.normal(0, 3)), unit: '%' as const },
  }));
  return draft(
    'importClimate',
    {
      name: `climate of HALL-1 from day ${monday}`,
      at: instant(monday + 4, '23:55'),
      by: LEAD,
      of: AREA_OF['hull molding'],
    },
    { points },
  );
};

/** The climate log of the hull hall, every two hours from Monday to Friday, read out once a week. */
export const climateLogs = (demo: Seeded, lastDay: number): readonly Draft[] =>
  Array.from({ length: WEEKS }, (_, i) => week(demo, Math.floor(lastDay / 5) * 5 - 5 * (i + 1)));
