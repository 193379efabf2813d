import { z } from 'zod';
import * as trade from '@hull-record/trade';
import { anyNumber, check } from '../check.js';

const unit = z.string().refine(trade.isUnit, 'no unit of the record');

/** Checks of units, hull identification numbers, wet film and areal mass. */
export const MEASURES = {
  'units.convert': check(
    'units',
    'a value in one unit as a value in another',
    { value: anyNumber, from: unit, to: unit },
    ({ value, from, to }) =>
      trade.dimensionOf(from) === trade.dimensionOf(to)
        ? trade.fromSi(trade.toSi(value, from), to)
        : 'another dimension',
  ),
  'units.kilograms': check(
    'units',
    'an amount of a material in kg',
    {
      quantity: anyNumber,
      unit,
      densityKgPerL: anyNumber.optional(),
      arealMassKgPerM2: anyNumber.optional(),
      pieceMassKg: anyNumber.optional(),
    },
    ({ quantity, unit: of, ...conversions }) => trade.toKilograms(quantity, of, conversions),
  ),
  'hin.decode': check('hin', 'what a hull identification number says', { hin: z.string() }, ({ hin }) =>
    trade.decodeHin(hin),
  ),
  'hin.encode': check('hin', 'a number read and written again', { hin: z.string() }, ({ hin }) => {
    const reading = trade.decodeHin(hin);
    return reading.valid ? trade.encodeHin(reading) : 'invalid';
  }),
  'hin.buildDates': check(
    'hin',
    'errors of the build month against the days of the build',
    { hin: z.string(), constructionBegan: z.string().optional(), leftPlant: z.string().optional() },
    ({ hin, ...dates }) => {
      const reading = trade.decodeHin(hin);
      return reading.valid ? trade.checkBuildDates(reading, dates).length : 'invalid';
    },
  ),
  'hin.placement': check('hin', 'where the two numbers go', {}, () => trade.HIN_PLACEMENT),
  'hin.nextSerial': check('hin', 'the serial after one', { serial: z.string() }, ({ serial }) =>
    trade.nextSerial(serial),
  ),
  'hin.sameKey': check(
    'hin',
    'whether two numbers collide under a rule',
    { a: z.string(), b: z.string(), rule: z.enum(['US', 'EU']) },
    ({ a, b, rule }) => {
      const [x, y] = [trade.decodeHin(a), trade.decodeHin(b)];
      if (!x.valid || !y.valid) return 'invalid';
      const key = rule === 'US' ? trade.usKey : trade.euKey;
      return key(x) === key(y);
    },
  ),
  'film.interval': check(
    'film',
    'what a notch gauge bounds',
    { lastWet: anyNumber, nextDry: anyNumber, unit },
    (given) => trade.filmInterval(given.lastWet, given.nextDry, given.unit),
  ),
  'film.onGauge': check('film', 'whether the example gauge has the notch', { value: anyNumber, unit }, (given) =>
    trade.onExampleGauge(given.value, given.unit),
  ),
  'film.judge': check(
    'film',
    'verdict of each spot against limits',
    {
      spots: z.array(anyNumber),
      unit,
      min: anyNumber.optional(),
      max: anyNumber.optional(),
      limitUnit: unit.optional(),
    },
    ({ spots, unit: of, min, max, limitUnit }) =>
      trade
        .judgeSpots(
          spots.map((low) => ({ low, unit: of })),
          { min, max, unit: limitUnit ?? of },
        )
        .map(({ verdict }) => verdict),
  ),
  'film.coverage': check(
    'film',
    'square feet that a US gallon covers at a film in mil',
    { mil: anyNumber },
    ({ mil }) => trade.coverageFt2PerUsGal(mil),
  ),
  'film.kilograms': check(
    'film',
    'kg in a film',
    { areaM2: anyNumber, filmUm: anyNumber, densityKgPerL: anyNumber },
    (given) => trade.filmKg(given.areaM2, given.filmUm, given.densityKgPerL),
  ),
  'film.fromKilograms': check(
    'film',
    'film (um) that kg make',
    { kg: anyNumber, areaM2: anyNumber, densityKgPerL: anyNumber },
    (given) => trade.filmFromKgUm(given.kg, given.areaM2, given.densityKgPerL),
  ),
  'film.fit': check(
    'film',
    'whether the kg used fit the film measured',
    { areaM2: anyNumber, filmUm: anyNumber, densityKgPerL: anyNumber, usedKg: anyNumber, lossAllowance: anyNumber },
    (given) => trade.judgeFilmFit(given),
  ),
  'film.dry': check('film', 'dry film of a coating that dries', { wet: anyNumber, solidsPercent: anyNumber }, (given) =>
    trade.dryFilm(given.wet, given.solidsPercent),
  ),
  'film.wet': check(
    'film',
    'wet film for a dry one',
    { dry: anyNumber, solidsPercent: anyNumber, thinnerPercent: anyNumber.optional() },
    (given) => trade.wetFilm(given.dry, given.solidsPercent, given.thinnerPercent),
  ),
  'arealMass.unit': check('areal mass', 'the unit a text names', { text: z.string() }, ({ text }) =>
    trade.readArealMassUnit(text),
  ),
} as const;
