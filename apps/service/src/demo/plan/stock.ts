import { BREAK_DAY } from './life.js';
import { instant } from './working-days.js';
import { QUALITY } from './people.js';
import { receive } from './receive.js';
import { draft, type Draft, type Seeded } from './step.js';
import type { MaterialCode } from './materials.js';

/** Materials that stand in the store and have not gone into a boat yet. */
const STANDING: readonly MaterialCode[] = ['PRO-C', 'INH-H', 'VEIL-30', 'BRD-20', 'PUT-F'];

/** Lots that go into no boat: standing stock, a rejected one, and one that waits in quarantine. */
export const idleStock = (demo: Seeded): readonly Draft[] => [
  ...STANDING.flatMap((material) => receive(demo, material, `${material}-01`, instant(5, '08:00'))),
  ...waiting(demo, 'PE', 'PE-90', instant(24, '08:00')),
  draft(
    'changeLotState',
    { name: 'lot PE-90 rejected', at: instant(25, '11:00'), by: QUALITY, of: 'PE-90' },
    { state: 'rejected', reason: 'Gel time of the sample 41 min; goes back to the supplier.' },
  ),
  ...waiting(demo, 'GEL-W', 'GEL-W-90', instant(BREAK_DAY, '13:00')),
];

/** A lot that was received and is still in quarantine. */
const waiting = (demo: Seeded, material: MaterialCode, code: string, neededAt: string): readonly Draft[] =>
  receive(demo, material, code, neededAt).filter(({ act }) => act === 'receiveLot');
