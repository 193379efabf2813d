import type { CaseSettings } from '../settings.js';

const DAY_MS = 86_400_000;

/** Months of days, YYYY-MM, each made once. */
export class Months {
  private readonly known = new Map<number, string>();

  /** @param day days since 1970-01-01 */
  of(day: number): string {
    const known = this.known.get(day);
    if (known !== undefined) return known;
    const month = new Date(day * DAY_MS).toISOString().slice(0, 7);
    this.known.set(day, month);
    return month;
  }
}

const quarter = (month: string): string => `${month.slice(0, 4)} Q${Math.ceil(Number(month.slice(5, 7)) / 3)}`;

/** Names of groups, each made once. */
export class Strata {
  private readonly known = new Map<string, Map<string, string>>();

  constructor(private readonly settings: Pick<CaseSettings, 'strata'>) {}

  /** The group within which a hull is compared, by its model and the month in which it was begun, YYYY-MM. */
  of(model: string, built: string): string {
    const known = this.known.get(model)?.get(built);
    if (known !== undefined) return known;
    const ofModel = this.known.get(model) ?? new Map<string, string>();
    const stratum = stratumOf(model, built, this.settings);
    this.known.set(model, ofModel.set(built, stratum));
    return stratum;
  }
}

const stratumOf = (model: string, built: string, { strata }: Pick<CaseSettings, 'strata'>): string => {
  const byQuarter = strata.includes('build quarter');
  if (!strata.includes('model')) return byQuarter ? quarter(built) : '';
  return byQuarter ? `${quarter(built)}, ${model}` : model;
};
