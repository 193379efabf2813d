import { amount } from './amounts.js';
import { behind, type DemoPart } from './parts.js';
import { INSPECTORS, PATCHERS } from './people.js';
import { draft, type Draft, type Seeded } from './step.js';
import { instant, later } from './working-days.js';

const ZONES = ['port topside', 'starboard topside', 'transom', 'sheer'] as const;
const KINDS = ['pit', 'scratch', 'chip'] as const;

/** Small spots of a hull molding, touched up after demolding in one entry, and looked at by another person. */
export const touchUpsOf = (demo: Seeded, part: DemoPart): readonly Draft[] => {
  const { random, startDay, serial } = part.hull;
  if (part.hull.index % 3 === 1) return [];
  const name = `${part.number} touch-up`;
  const at = later(instant(startDay + 10 + behind(part.hull), '08:30'), random.whole(0, 90));
  const spots = ZONES.slice(0, random.whole(1, 3)).map((zone) => ({
    ...{ zone, kind: random.pick(KINDS), count: random.whole(1, 5), largestMm: random.whole(1, 6) },
  }));
  return [
    draft(
      'recordTouchUp',
      { name, at, by: random.pick(PATCHERS), of: part.number },
      { spots, doneBy: [random.pick(PATCHERS)], note: `Demo: shade of ${serial} matched by eye.` },
      [{ material: part.hull.gelCoat, amount: amount(random.between(0.05, 0.3), 'kg') }],
    ),
    draft(
      'judgeTouchUp',
      { name: `${name} accepted`, at: later(at, 200), by: random.pick(INSPECTORS), of: demo.id(name) },
      { accepted: true },
    ),
  ];
};
