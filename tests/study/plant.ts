import { below, seeded, unit, type Exposure, type Judged, type Random } from '@hull-record/statistics';
import { exposuresOf, misread, nameOf, shareInFill, SIZE, useLots, type Used } from './lots.js';
import { claimsOf, type Lived } from './claims.js';
import type { Scenario } from './scenarios.js';

/** A plant as a case sees it, and what nobody knows but the study. */
export interface Plant {
  readonly judged: Judged;
  readonly exposures: readonly Exposure[];
  readonly molds: readonly Exposure[];
  /** Names of the bad lots. */
  readonly bad: readonly string[];
  readonly badMold: string | null;
}

const YEARS_OF_BUILDING = 3;
const DAYS = YEARS_OF_BUILDING * 365;
const MOLDS = 8;
const MODELS = 2;

/** Lives a plant of a scenario; the same seed gives the same plant. */
export const livePlant = (scenario: Scenario, seed: number): Plant => {
  const random = seeded(seed);
  const built = Float64Array.from({ length: SIZE.hulls }, (_, hull) => ((hull + unit(random)) * DAYS) / SIZE.hulls);
  const model = Uint32Array.from(built, () => below(random, MODELS));
  const mold = model.map((own) => own + MODELS * below(random, MOLDS / MODELS));
  const used = Array.from({ length: SIZE.families }, (_, family) => useLots(random, family === 0 ? 0 : SIZE.strays));
  const watched = watchedOf(built, scenario, random);
  const bad = pickBad(scenario, random);
  const badMold = scenario.badMold ? below(random, MOLDS) : null;
  const doses = bad.map(({ family, lot }) => dosesOf(family, lot, used[family] as Used));
  if (badMold !== null) doses.push(Float64Array.from(mold, (own) => (own === badMold ? 1 : 0)));
  const inspected = inspectedHulls(scenario, bad, used, random);
  const carried = doses.map(() => scenario.carries[0] + (scenario.carries[1] - scenario.carries[0]) * unit(random));
  const lived: Lived = { watched, doses, carried, shape: scenario.steepAges ? STEEP : EVEN, inspected };
  const recorded = scenario.wrongScans ? used.map((own) => misread(own, random, scenario.wrongScans ?? 0)) : used;
  const strata = Uint32Array.from(built, (day, hull) => Math.floor(day / 91.31) * MODELS + (model[hull] as number));
  return {
    judged: { ...claimsOf(lived, random), strata },
    exposures: recorded.flatMap((own, family) => exposuresOf(family, own)),
    molds: Array.from({ length: MOLDS }, (_, own) => ({
      ...{ lot: `mold ${own}`, family: 'mold' },
      hulls: Uint32Array.from([...mold.keys()].filter((hull) => mold[hull] === own)),
    })),
    bad: bad.map(({ family, lot }) => nameOf(family, lot)),
    badMold: badMold === null ? null : `mold ${badMold}`,
  };
};

/** Shapes of the Weibull that claims come by: as likely at any age, or rising with the third power of it. */
const EVEN = 1;
const STEEP = 4;

/** Hulls are sold within four months; watched until a year after the last, or until the last has just been sold. */
const watchedOf = (built: Float64Array, { steepAges }: Scenario, random: Random): Float64Array => {
  const cutOff = DAYS + (steepAges ? 150 : 365);
  return built.map((day) => cutOff - day - 20 - 100 * unit(random));
};

interface Lot {
  readonly family: number;
  readonly lot: number;
}

/** Bad lots of unlike families; not the first ones, nor of the older half where age mixes with lots. */
const pickBad = ({ badLots, throughTank, steepAges }: Scenario, random: Random): readonly Lot[] => {
  const [from, to] = steepAges ? [15, 27] : [2, 28];
  const first = throughTank ? 0 : 1 + below(random, SIZE.families - 1);
  return Array.from({ length: badLots }, (_, i) => ({
    family: i === 0 ? first : 1 + ((first - 1 + 1 + below(random, SIZE.families - 2)) % (SIZE.families - 1)),
    lot: from + below(random, to - from),
  }));
};

const dosesOf = (family: number, lot: number, used: Used): Float64Array =>
  Float64Array.from(used, (own) => (family === 0 ? shareInFill(lot, own) : own === lot ? 1 : 0));

/** Hulls of an innocent lot, of another family, in which the inspection of its hold finds something. */
const inspectedHulls = (
  { prompted = 0 }: Scenario,
  bad: readonly Lot[],
  used: readonly Used[],
  random: Random,
): ReadonlySet<number> => {
  if (prompted === 0) return new Set();
  const family = 1 + ((bad[0]?.family ?? 1) % (SIZE.families - 1));
  const held = 5 + below(random, 20);
  const own = used[family] as Used;
  return new Set([...own.keys()].filter((hull) => own[hull] === held && unit(random) < prompted));
};
