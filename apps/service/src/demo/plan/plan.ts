import { buildHull } from './build-hull.js';
import { equipmentChecks } from './checks.js';
import { blisterCase, blistersOf, warrantyTerms } from './claims.js';
import { climateLogs } from './climate.js';
import { withCorrections } from './corrections.js';
import { dealerDesks } from './dealer-desks.js';
import { dealers } from './dealers.js';
import { BREAK_DAY } from './life.js';
import { withMishaps } from './mishaps.js';
import { withPhotos } from './photos.js';
import { modelsAndSchedules } from './publish-schedules.js';
import { hullAt, HULL_COUNT, type DemoHull } from './parts.js';
import { peopleAndDevices } from './people.js';
import { materialsAndTanks } from './register-materials.js';
import { seeded, type Draft, type Seeded, type Step } from './step.js';
import { idleStock } from './stock.js';
import { inOrder, supply, toStep } from './supply.js';
import { instant } from './working-days.js';

/** The seed of the demo that ships. Another seed is another plant: it would not go into the same database. */
export const SEED = 'Tarrow Sound Boats 1';

export { BAD_LOT } from './set-aside.js';

/** A gel coat lot with nothing wrong, that was used in the same weeks. */
export const INNOCENT_LOT = 'GEL-W-04';

/**
 * Everything that happens in the demo plant, in order of time. The same seed gives the same steps, to the last byte.
 *
 * An invented plant, Tarrow Sound Boats: people, suppliers, dealers, materials and figures are made up.
 */
export const planDemo = (seed: string = SEED): readonly Step[] => {
  const demo = seeded(seed);
  const hulls = Array.from({ length: HULL_COUNT }, (_, i) => hullAt(i, demo));
  const drafts = [
    ...[
      ...peopleAndDevices(),
      ...dealers(),
      ...dealerDesks(),
      ...materialsAndTanks(),
      ...modelsAndSchedules(),
      ...idleStock(demo),
    ],
    ...hulls.flatMap((hull) => untilTheBreak(demo, hull)),
    ...warrantyTerms(),
    ...hulls.flatMap(blistersOf),
    ...blisterCase(BREAK_DAY),
    ...equipmentChecks(demo, BREAK_DAY),
    ...climateLogs(demo, BREAK_DAY),
  ];
  return inOrder(withCorrections(demo, supply(demo, withPhotos(demo, drafts)))).map((supplied) =>
    toStep(demo, supplied),
  );
};

/** What was done before the summer break; only what happens outside the plant goes on in it. */
const untilTheBreak = (demo: Seeded, hull: DemoHull): readonly Draft[] => {
  const stop = instant(BREAK_DAY, '15:30');
  return withMishaps(demo, hull, buildHull(demo, hull)).filter(
    ({ at, name }) => at <= stop || name.includes(' sold to '),
  );
};
