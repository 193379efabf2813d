import type { MaterialCode } from './materials.js';
import { moldsOf, TS62, TS86, type DemoModel, type PartKind } from './models.js';
import type { Random } from './random.js';
import type { Seeded } from './step.js';
import { isFriday } from './working-days.js';

export const HULL_COUNT = 30;

/** A hull of the demo: what it is, and when it is begun. */
export interface DemoHull {
  readonly index: number;
  readonly model: DemoModel;
  readonly number: string;
  /** Positions 4 to 8 of its HIN. */
  readonly serial: string;
  readonly startDay: number;
  readonly gelCoat: MaterialCode;
  /** Some skin coats come from drums when the tank is needed elsewhere. */
  readonly skinFromDrum: boolean;
  readonly random: Random;
}

/** A part of a hull of the demo. */
export interface DemoPart {
  readonly hull: DemoHull;
  readonly kind: PartKind;
  readonly number: string;
  readonly mold: string;
  readonly area: number;
}

/** Eight hulls in thirteen working days, large and small in turn, over some ten weeks; never begun on a Friday. */
export const hullAt = (index: number, demo: Seeded): DemoHull => {
  const model = index % 2 === 0 ? TS86 : TS62;
  const serial = `${model.short}${String(model.firstNumber + Math.floor(index / 2)).padStart(3, '0')}`;
  const day = 2 + Math.floor((index * 13) / 8);
  return {
    ...{ index, model, serial, number: `${model.code}-${serial.slice(2)}` },
    startDay: isFriday(day) ? day + 1 : day,
    gelCoat: index % 3 === 2 ? 'GEL-N' : 'GEL-W',
    skinFromDrum: index % 9 === 6,
    random: demo.random(serial),
  };
};

const SUFFIX: Readonly<Record<PartKind, string>> = { 'hull molding': 'H', deck: 'D', 'stringer grid': 'G' };

export const partOf = (hull: DemoHull, kind: PartKind): DemoPart => {
  const molds = moldsOf(hull.model, kind);
  return {
    ...{ hull, kind, number: `${hull.number}-${SUFFIX[kind]}`, area: hull.model.area[kind] },
    mold: molds[Math.floor(hull.index / 2) % molds.length] as string,
  };
};
