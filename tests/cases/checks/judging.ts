import { z } from 'zod';
import * as trade from '@hull-record/trade';
import { anyNumber, check } from '../check.js';

const checks = z.array(z.strictObject({ on: z.string(), good: z.boolean() }));
const grade = z.string().transform((text, context) => {
  const parsed = trade.parseD714(text);
  if (parsed === undefined) context.addIssue({ code: 'custom', message: `${text} is no grade of ASTM D714` });
  return parsed as trade.D714Grade;
});
const boats = z.array(
  z.strictObject({
    leftPlant: z.boolean(),
    inspected: z.enum(['defect', 'none', 'not yet']),
    corrected: z.boolean(),
    notified: z.enum(['yes', 'returned', 'not yet']),
  }),
);
const stored = z.strictObject({ code: z.string(), receivedOn: z.string(), expiresOn: z.string().nullable() });
const market = z.enum(['EU', 'US']);

/** Checks of blisters, flaws, gauges, retention and the shop's other controls. */
export const JUDGING = {
  'blister.isGrade': check(
    'blister',
    'whether a text is a grade of ASTM D714',
    { grade: z.string() },
    (given) => trade.parseD714(given.grade) !== undefined,
  ),
  'blister.compare': check(
    'blister',
    'which of two grades is worse: -1 the second, 1 the first, 0 neither',
    { a: grade, b: grade },
    ({ a, b }) => Math.sign(trade.compareD714(a, b)),
  ),
  'blister.iso4628': check('blister', 'the ISO 4628-2 grade that corresponds (from memory)', { grade }, (given) =>
    trade.formatIso4628(trade.iso4628Of(given.grade)),
  ),
  'blister.sizeClass': check(
    'blister',
    'size class of a diameter (from memory)',
    { diameterMm: anyNumber },
    ({ diameterMm }) => trade.sizeClassOf(diameterMm),
  ),
  'blister.density': check('blister', 'blisters per m2', { count: anyNumber, areaM2: anyNumber }, (given) =>
    trade.blistersPerM2(given.count, given.areaM2),
  ),
  'blister.survey': check(
    'blister',
    'what speaks against a survey of wetness',
    { hoursAshore: anyNumber, readings: anyNumber, lengthM: anyNumber, areaM2: anyNumber.optional() },
    (given) => trade.surveyDoubts(given).length,
  ),
  'blister.hint': check(
    'blister',
    'where a blister may come from by its looks',
    { diameterMm: anyNumber, shape: z.enum(['round', 'irregular']) },
    (given) => trade.blisterHint(given.diameterMm, given.shape),
  ),
  'flaw.causes': check('flaw', 'causes that a list names for a kind', { kind: z.string() }, ({ kind }) =>
    trade.isDefectKind(kind) ? trade.likelyCauses(kind) : 'no kind of defect',
  ),
  'flaw.kinds': check('flaw', 'kinds that a shop word may mean', { word: z.string() }, ({ word }) =>
    trade.defectKindsCalled(word),
  ),
  'flaw.judge': check(
    'flaw',
    'a flaw at a level of the default table',
    {
      kind: z.string().refine(trade.isDefectKind, 'no kind of defect'),
      size: anyNumber,
      unit: z.enum(['mm', 'in']),
      level: z.enum(['I', 'II', 'III']),
      count: z.strictObject({ found: anyNumber, areaMm2: anyNumber }).optional(),
    },
    ({ level, count, ...flaw }) => trade.judgeFlaw({ ...flaw, ...(count ? { count } : {}) }, level),
  ),
  'gauge.state': check(
    'gauge',
    'how a gauge stands on a day',
    { checks, on: z.string(), intervalDays: anyNumber },
    (given) => trade.calibrationOn(given.checks, given.on, given.intervalDays),
  ),
  'gauge.isSuspect': check(
    'gauge',
    'whether a reading is in the window of a bad check',
    { checks, badOn: z.string(), takenOn: z.string() },
    (given) => trade.isSuspect(given.takenOn, trade.recallWindow(given.checks, given.badOn)),
  ),
  'retention.keepUntil': check(
    'retention',
    'the day until which a record is kept',
    { builtOn: z.string(), placedOn: z.string().nullable(), markets: z.array(market) },
    ({ markets, ...dates }) =>
      trade.keepUntil(
        dates,
        markets.map((each) => trade.RETENTION_RULES[each]),
      )?.day ?? null,
  ),
  'retention.years': check('retention', 'the same day years later', { day: z.string(), years: anyNumber }, (given) =>
    trade.yearsAfter(given.day, given.years),
  ),
  'retention.lookBack': check(
    'retention',
    'whether a defect is inside the look-back of 10 years',
    { builtOn: z.string(), foundOn: z.string() },
    (given) => trade.insideLookBack(given.builtOn, given.foundOn),
  ),
  'retention.expired': check(
    'retention',
    'whether a lot has expired on a day',
    { expiresOn: z.string(), on: z.string() },
    (given) => trade.isExpired(given.expiresOn, given.on),
  ),
  'retention.noticeDue': check('retention', 'last day of a defect notice', { decidedOn: z.string() }, (given) =>
    trade.noticeDue(given.decidedOn),
  ),
  'retention.followUpDue': check(
    'retention',
    'last day of the follow-up report',
    { initialReportOn: z.string() },
    (given) => trade.followUpDue(given.initialReportOn),
  ),
  'retention.followUp': check('retention', 'figures of the reports on a defect', { boats }, (given) =>
    trade.followUpFigures(given.boats),
  ),
  'retention.passedOver': check(
    'retention',
    'lots that came earlier and still stand there',
    { used: stored, others: z.array(stored), on: z.string() },
    (given) => trade.passedOver(given.used, given.others, given.on),
  ),
  'control.kind': check('control', 'what a control measures', { kind: z.string() }, ({ kind }) => {
    const known: Readonly<Record<string, trade.ReadingKind>> = trade.READING_KINDS_OF_THE_SHOP;
    return Object.hasOwn(known, kind) ? known[kind]?.dimension : 'no control of the shop';
  }),
  'control.partWeight': check(
    'control',
    'part weight over (or under) its target, as a fraction',
    { kg: anyNumber, targetKg: anyNumber },
    (given) => trade.weightAgainstTarget(given.kg, given.targetKg),
  ),
} as const;
