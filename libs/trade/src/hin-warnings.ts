import type { HinDate } from './hin-tail.js';
import { FIRST_HIN_MONTH, LAST_OLD_FORMAT_MONTH, yearMonth } from './hin-years.js';

/** More years than this between build and model year are worth a second look; no rule limits the gap. */
const USUAL_GAP_YEARS = 2;

/**
 * Doubts about a number that reads well, as sentences; never reasons to refuse it.
 *
 * 33 CFR 181.25 sets no limit on the gap between build and model year. In an ISO number the model year is the year the
 * craft is meant to be put on the market (Reg. (EU) 2017/1 Art. 3(1)), so a build after it is implausible too.
 */
export const warningsOf = (read: HinDate & { readonly country?: string; readonly mic: string }): readonly string[] =>
  [tooEarly(read), oldFormatTooLate(read), wideGap(read), implausiblePair(read), unusualCode(read.mic)].filter(
    (warning) => warning !== undefined,
  );

const built = ({ buildYear, buildMonth }: HinDate): string => yearMonth(buildYear, buildMonth);

const tooEarly = (read: HinDate): string | undefined =>
  built(read) < FIRST_HIN_MONTH
    ? `Build month ${built(read)} is before hull identification numbers existed (1 November 1972).`
    : undefined;

const oldFormatTooLate = (read: HinDate): string | undefined => {
  if (read.format === 'current' || built(read) <= LAST_OLD_FORMAT_MONTH) return undefined;
  const hint = read.format === 'straight-year' && read.buildMonth >= 10 ? ' Position 9: I or 1?' : '';
  return `Build month ${built(read)} is after this form of number ended (31 July 1984).${hint}`;
};

const gapOf = ({ buildYear, modelYear = buildYear }: HinDate): number => Math.abs(modelYear - buildYear);

const wideGap = (read: HinDate): string | undefined =>
  gapOf(read) > USUAL_GAP_YEARS
    ? `Build year ${read.buildYear} and model year ${read.modelYear} are ${gapOf(read)} years apart; check both.`
    : undefined;

const implausiblePair = (read: HinDate & { readonly country?: string }): string | undefined => {
  const { buildYear, modelYear, country } = read;
  if (country === undefined || modelYear === undefined) return undefined;
  if (buildYear <= modelYear && gapOf(read) <= USUAL_GAP_YEARS) return undefined;
  return (
    `Year digit ${buildYear % 10} and model year ${modelYear} do not fit together: ` +
    `the build year could be ${buildYear} or ${buildYear + 10}. Read the number on the boat again.`
  );
};

const unusualCode = (mic: string): string | undefined =>
  /^[A-Z]{3}$/.test(mic)
    ? undefined
    : `Manufacturer code ${mic} has a digit; most are three letters (common practice).`;
