import { yearsAfter } from './days.js';

/** A rule for how long a build record is kept. */
export interface RetentionRule {
  readonly market: string;
  readonly years: number;
  readonly from: 'placed on the market' | 'built';
  readonly source: string;
}

/** Rules by the market a boat was placed on. A plant adds its own; the longest that applies holds. */
export const RETENTION_RULES = {
  EU: {
    market: 'EU',
    years: 10,
    from: 'placed on the market',
    source: 'Recreational Craft Directive 2013/53/EU Art. 7(3) (from memory, confirm against the text)',
  },
  US: {
    market: 'US',
    years: 10,
    from: 'built',
    source: '46 USC 4310(c)(2): look-back of a defect notice; no rule asks to keep build records so long',
  },
} as const satisfies Readonly<Record<string, RetentionRule>>;

/** The day until which a record is kept, and by which rule. */
export interface KeepUntil {
  readonly day: string;
  readonly rule: RetentionRule;
}

interface Dates {
  readonly builtOn: string;
  /** Day placed on the market; null while it was not. */
  readonly placedOn: string | null;
}

/**
 * Until when a record is kept: the latest day any of the rules gives; null when none has its day yet.
 *
 * Days are YYYY-MM-DD. Throws NotACalendarDate.
 */
export const keepUntil = ({ builtOn, placedOn }: Dates, rules: readonly RetentionRule[]): KeepUntil | null => {
  const days = rules.flatMap((rule) => {
    const start = rule.from === 'built' ? builtOn : placedOn;
    return start === null ? [] : [{ day: yearsAfter(start, rule.years), rule }];
  });
  return days.sort((a, b) => (a.day < b.day ? -1 : 1)).at(-1) ?? null;
};
