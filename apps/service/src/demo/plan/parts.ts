import type { MaterialCode } from './materials.js';
import { MODELS, moldsOf, type DemoModel, type PartKind } from './models.js';
import type { Random } from './random.js';
import type { Seeded } from './step.js';
import { isFriday } from './working-days.js';

export const HULL_COUNT = 120;

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
  /** Its bulk laminate is laid up by the night shift; what comes after is a day later. */
  readonly atNight: boolean;
  /** Its deck is scrapped and made again; what comes after is six days later. */
  readonly deckRemade: boolean;
  readonly random: Random;
}

/** A part of a hull of the demo. */
export interface DemoPart {
  readonly hull: DemoHull;
  readonly kind: PartKind;
  readonly number: string;
  readonly mold: string;
  readonly area: number;
  /** Stands in the codes of its buckets and kits, so that a part that is made again has its own. */
  readonly tag: string;
  /** Working days by which it is made later than others of its kind. */
  readonly late: number;
}

/** The hull whose deck is made twice. */
const REMADE = 63;

/** Some eight hulls in five weeks, the models in turn, over eighteen months; never begun on a Friday. */
export const hullAt = (index: number, demo: Seeded): DemoHull => {
  const model = MODELS[index % MODELS.length] as DemoModel;
  const serial = `${model.short}${String(model.firstNumber + Math.floor(index / MODELS.length)).padStart(3, '0')}`;
  const day = 2 + Math.floor((index * 62) / 20);
  return {
    ...{ index, model, serial, number: `${model.code}-${serial.slice(2)}` },
    startDay: isFriday(day) ? day + 1 : day,
    gelCoat: index % 4 === 2 ? 'GEL-N' : 'GEL-W',
    skinFromDrum: index % 9 === 6,
    atNight: index % 11 === 5,
    deckRemade: index === REMADE,
    random: demo.random(serial),
  };
};

const SUFFIX: Readonly<Record<PartKind, string>> = { 'hull molding': 'H', deck: 'D', 'stringer grid': 'G' };

export const partOf = (hull: DemoHull, kind: PartKind): DemoPart => {
  const molds = moldsOf(hull.model, kind);
  return {
    ...{ hull, kind, number: `${hull.number}-${SUFFIX[kind]}`, area: hull.model.area[kind], tag: '', late: 0 },
    mold: molds[Math.floor(hull.index / MODELS.length) % molds.length] as string,
  };
};

/** The same part made again, some days later. */
export const remade = (part: DemoPart): DemoPart => ({ ...part, number: `${part.number}2`, tag: 'R', late: 6 });

/** By how many working days a hull is behind the usual from its core on: after a night shift, or for a deck made again. */
export const behind = ({ atNight, deckRemade }: DemoHull): number => (atNight ? 1 : 0) + (deckRemade ? 6 : 0);

/** The working day on which a layer of a part is made, counted from the start of its hull. */
export const dayOfLayer = ({ hull, kind, late }: DemoPart, { code, day }: { code: string; day: number }): number =>
  day + late + (hull.atNight && kind === 'hull molding' && code > NIGHT_LAYER ? 1 : 0);

/** The layer that the night shift lays up. */
export const NIGHT_LAYER = 'H4';
