import type { CaseForecast } from '@hull-record/contracts';
import { seeded, triangle } from '@hull-record/statistics';
import type { CaseInputs } from '../inputs/case-inputs.js';
import type { CaseSettings } from '../settings.js';
import { forecastGroup, MONTH_DAYS, MONTHS_AHEAD } from './forecast-group.js';

const monthNumber = (month: string): number => Number(month.slice(0, 4)) * 12 + Number(month.slice(5, 7)) - 1;
const monthName = (month: number): string => `${Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, '0')}`;

/** Said of all hulls where some stand out: one curve for both is neither's. */
const APART = 'Hulls with what leads and the others are told apart below: go by those.';

/** How many more first claims to expect: of all hulls, and of the leading class when one stands out. */
export const forecastOfCase = (
  inputs: CaseInputs,
  { attribution }: CaseSettings,
  leading: { readonly named: string; readonly hulls: Iterable<number> } | null,
): CaseForecast | null => {
  const { hulls, warrantyCapDays } = inputs;
  if (hulls.length === 0) return null;
  const random = seeded(attribution.seed);
  const ahead = { random, warrantyCapDays };
  const exposed = new Set(leading?.hulls ?? []);
  const groups = [
    forecastGroup('all hulls at risk', hulls, ahead),
    ...(leading
      ? [
          forecastGroup(
            `hulls with ${leading.named}`,
            hulls.filter((_, place) => exposed.has(place)),
            ahead,
          ),
          forecastGroup(
            'the other hulls',
            hulls.filter((_, place) => !exposed.has(place)),
            ahead,
          ),
        ]
      : []),
  ]
    .filter((group) => group.hulls > 0)
    .map((group, i) => (i === 0 && leading !== null ? { ...group, sentence: `${group.sentence} ${APART}` } : group));
  return {
    ...{ from: inputs.watchedUntil, monthsAhead: MONTHS_AHEAD, warrantyCapDays, groups },
    triangle: triangleOf(inputs),
    notLaunched: inputs.leftOut.notLaunched,
    cannotSay:
      'Groups are fitted each by itself and do not add up to all hulls. It goes on as it went: another season, a notice or a repair changes it. Far ahead it rests on the shape of the fit alone.',
  };
};

const triangleOf = ({ hulls }: CaseInputs): CaseForecast['triangle'] => {
  const { cells } = triangle(
    hulls.map(({ built, since, from, until, claimAges }) => ({
      built: monthNumber(built),
      inService: monthNumber(since),
      monthsBefore: Math.floor(from / MONTH_DAYS),
      monthsWatched: Math.floor(until / MONTH_DAYS),
      claimMonths: claimAges.map((age) => Math.floor(age / MONTH_DAYS)),
    })),
  );
  return [...cells]
    .sort(([a], [b]) => a - b)
    .map(([built, row]) => ({ built: monthName(built), cells: row.map(({ claims, atRisk }) => ({ claims, atRisk })) }));
};
