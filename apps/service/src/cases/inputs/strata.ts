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

/** Groups of a model, and the last that was asked for: hulls come in the order of their making, or nearly. */
interface OfModel {
  readonly known: Map<string, string>;
  month: string;
  stratum: string;
}

/** Names of groups, each made once. */
export class Strata {
  private readonly models = new Map<string, OfModel>();

  constructor(private readonly settings: Pick<CaseSettings, 'strata'>) {}

  /** The group within which a hull is compared, by its model and the month in which it was begun, YYYY-MM. */
  of(model: string, built: string): string {
    const own = this.models.get(model) ?? { known: new Map<string, string>(), month: '', stratum: '' };
    if (own.month === built) return own.stratum;
    own.stratum = own.known.get(built) ?? stratumOf(model, built, this.settings);
    own.month = built;
    own.known.set(built, own.stratum);
    this.models.set(model, own);
    return own.stratum;
  }
}

const stratumOf = (model: string, built: string, { strata }: Pick<CaseSettings, 'strata'>): string => {
  const byQuarter = strata.includes('build quarter');
  if (!strata.includes('model')) return byQuarter ? quarter(built) : '';
  return byQuarter ? `${quarter(built)}, ${model}` : model;
};
