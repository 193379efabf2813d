import type { DefectKind } from '@hull-record/trade';

import { INSPECTORS, QUALITY } from './people.js';
import { somewhere } from './places.js';
import { repair } from './repair.js';
import { draft, type Draft, type Seeded } from './step.js';
import { behind, NIGHT_LAYER, type DemoPart } from './parts.js';
import { instant, later } from './working-days.js';

/** What is found in which layer, and on which working day of the hull: in a laminate the next morning, in gel coat at demolding. */
const FINDS: readonly { readonly layer: string; readonly day: number; readonly kinds: readonly DefectKind[] }[] = [
  { layer: 'H1', day: 9, kinds: ['pre-gel', 'porosity', 'sag', 'alligatoring'] },
  { layer: 'H2', day: 2, kinds: ['air-bubble', 'air-bubble', 'dry-spot'] },
  { layer: 'H4', day: 4, kinds: ['air-bubble', 'dry-glass', 'wrinkles', 'resin-pocket'] },
];

/** Defects found on a hull molding while it is built: one or two; the first is repaired and accepted, the second perhaps left under concession. */
export const defectsOf = (demo: Seeded, part: DemoPart): readonly Draft[] => {
  const { random } = part.hull;
  const count = random.whole(1, 2);
  return Array.from({ length: count }, (_, i) => oneDefect(demo, part, i + 1)).flat();
};

const oneDefect = (demo: Seeded, part: DemoPart, nth: number): readonly Draft[] => {
  const { random, startDay, model } = part.hull;
  const { layer, day, kinds } = random.pick(FINDS);
  const lengthMm = random.whole(6, 34);
  const name = `${part.number} defect ${nth}`;
  const late = day > 4 ? behind(part.hull) : 0;
  const at = later(
    instant(startDay + day + late, layer === NIGHT_LAYER && part.hull.atNight ? '17:30' : '06:52'),
    nth * 2,
  );
  const reported = draft(
    'reportDefect',
    { name, at, by: random.pick(INSPECTORS), of: part.number },
    {
      ...{ kind: random.pick(kinds), layer, place: somewhere(model.skins[part.kind], random) },
      ...{ lengthMm, widthMm: random.whole(4, lengthMm) },
    },
  );
  return [
    reported,
    ...(nth > 1 && random.next() < 0.5 ? [concession(demo, part, name, at)] : repair(demo, part, name, at)),
  ];
};

const concession = (demo: Seeded, part: DemoPart, name: string, at: string): Draft =>
  draft(
    'dispose',
    { name: `${name} conceded`, at: later(at, 80), by: QUALITY },
    {
      ...{ of: 'defect', about: demo.id(name), disposition: 'use as is' },
      ...{ concession: `C-${part.hull.serial}-D${name.slice(-1)}`, reason: 'Small, shallow and away from joints.' },
    },
  );
