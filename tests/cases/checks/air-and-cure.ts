import { z } from 'zod';
import * as trade from '@hull-record/trade';
import { anyNumber, check } from '../check.js';

const HOUR_MS = 3_600_000;

/** A climate log as hours from its beginning, C and per cent. */
const log = z
  .array(z.strictObject({ hour: anyNumber, airC: anyNumber, humidityPercent: anyNumber.default(60) }))
  .transform((points) => points.map(({ hour, ...point }) => ({ at: hour * HOUR_MS, ...point })));

const window = z.strictObject({ minPercent: anyNumber, maxPercent: anyNumber });
const rule = z.enum(Object.keys(trade.MARGIN_RULES) as [trade.MarginRule, ...trade.MarginRule[]]);
const shopWindow = z.enum(['class rule', 'recommended workshop']);

/** Checks of climate, catalyst, cure and mixing. */
export const AIR_AND_CURE = {
  'climate.dewPoint': check('climate', 'dew point, C', { airC: anyNumber, humidityPercent: anyNumber }, (given) =>
    trade.dewPointC(given.airC, given.humidityPercent),
  ),
  'climate.saturationPressure': check(
    'climate',
    'pressure of saturated vapour over water, Pa',
    { airC: anyNumber },
    ({ airC }) => trade.saturationPressurePa(airC),
  ),
  'climate.margin': check(
    'climate',
    'margin of a surface over the dew point',
    { airC: anyNumber, humidityPercent: anyNumber, surfaceC: anyNumber, rule },
    ({ rule: by, ...measured }) => trade.judgeSurfaceMargin(measured, by),
  ),
  'climate.judge': check(
    'climate',
    'what was out of a shop window while work was done',
    { log, startedAtHour: anyNumber, endedAtHour: anyNumber, sprayed: z.boolean(), window: shopWindow },
    (given) =>
      trade
        .judgeClimate(
          given.log,
          { startedAt: given.startedAtHour * HOUR_MS, endedAt: given.endedAtHour * HOUR_MS, sprayed: given.sprayed },
          trade.SHOP_WINDOWS[given.window],
        )
        .map((fault) => fault.rule),
  ),
  'climate.dailySpread': check('climate', 'largest spread within 24 h, C', { log }, (given) =>
    trade.largestDailySpreadC(given.log),
  ),
  'catalyst.percentByMass': check(
    'catalyst',
    'per cent by mass',
    { catalystKg: anyNumber, resinKg: anyNumber },
    (given) => trade.catalystPercentByMass(given.catalystKg, given.resinKg),
  ),
  'catalyst.percentByVolume': check(
    'catalyst',
    'per cent by volume',
    { catalystL: anyNumber, resinL: anyNumber },
    (given) => trade.catalystPercentByVolume(given.catalystL, given.resinL),
  ),
  'catalyst.massOfVolumePercent': check(
    'catalyst',
    'per cent by mass that a per cent by volume is',
    { volumePercent: anyNumber, catalystKgPerL: anyNumber, resinKgPerL: anyNumber },
    ({ volumePercent, ...densities }) => trade.massPercentOfVolumePercent(volumePercent, densities),
  ),
  'catalyst.dose': check(
    'catalyst',
    'grams and millilitres for a mix',
    { resinKg: anyNumber, percentByMass: anyNumber, catalystKgPerL: anyNumber },
    (given) => trade.catalystDose(given.resinKg, given.percentByMass, given.catalystKgPerL),
  ),
  'catalyst.judge': check(
    'catalyst',
    'verdict against a window',
    { percentByMass: anyNumber, window },
    (given) => trade.judgeCatalyst(given.percentByMass, { ...given.window, source: 'as given' }).verdict,
  ),
  'catalyst.atTemperature': check(
    'catalyst',
    'per cent of a data sheet at a temperature',
    { sheet: z.array(z.strictObject({ temperatureC: anyNumber, percentByMass: anyNumber })), temperatureC: anyNumber },
    (given) => trade.percentAtTemperature(given.sheet, given.temperatureC),
  ),
  'cure.window': check(
    'cure',
    'how the next layer bonds, by minutes after the end of the one before',
    { earliestMinutes: anyNumber, latestMinutes: anyNumber, begunAfterMinutes: anyNumber },
    ({ begunAfterMinutes, ...window }) => trade.bondOf(begunAfterMinutes * 60_000, trade.layUpTimes(0, window)),
  ),
  'cure.warmHours': check(
    'cure',
    'longest time at a temperature or over, h; a longer gap of the log ends it',
    { log, atLeastC: anyNumber, gapHours: anyNumber },
    (given) => trade.longestHoursAtLeast(given.log, given.atLeastC, given.gapHours),
  ),
  'cure.degreeHours': check(
    'cure',
    'degree-hours above a base',
    { log, baseC: anyNumber, fromHour: anyNumber, untilHour: anyNumber },
    (given) =>
      trade.degreeHours(given.log, given.baseC, { from: given.fromHour * HOUR_MS, until: given.untilHour * HOUR_MS }),
  ),
  'mixing.judge': check(
    'mixing',
    'whether catalyst and promoter would meet without resin, and whether promoter comes first',
    { roles: z.array(z.enum(trade.MATERIAL_ROLES)) },
    ({ roles }) => ({
      stop: trade.meetsWithoutResin(roles.map((role) => [role])),
      promoterComesFirst: trade.promoterComesFirst(roles),
    }),
  ),
} as const;
