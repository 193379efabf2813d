import type { AmountView, Limits } from '@hull-record/contracts';
import { isUnit } from '@hull-record/trade';
import type { Speaker } from '../language/speak.js';
import type { Units } from '../preferences/preferences.js';
import { unitSign, type Figures } from './figures.js';
import { converted, wishedUnit } from './measures.js';

/** Writes quantities in a language, in the units that were chosen. */
export interface Quantities {
  /** A mass given in kilograms, to four digits or as many as asked for; what is left of a lot after many fills of a tank, to two. */
  readonly mass: (kg: number, digits?: number) => string;
  /** A share as a percentage. What is not the whole never reads as 100 %. */
  readonly percent: (share: number) => string;
  /** An amount as entered, in the chosen unit of mass too when it was entered in another unit. */
  readonly amount: (amount: AmountView) => string;
  /** A value or an interval as entered; in the chosen unit first when that is another. Film in mil is in µm too. */
  readonly reading: (value: string, below: string | null, unit: string) => string;
  /** Limits in words, with their unit; as they were set too, when they are shown in another unit. */
  readonly limits: (limits: Limits) => string;
}

type Of = Figures & Pick<Speaker, 't'> & { readonly units: Units };

export const quantitiesOf = (of: Of): Quantities => {
  const mass = (kg: number, digits = 4): string => {
    const value = of.units.mass === 'kg' ? kg : converted(kg, 'kg', 'lb');
    return `${of.figure(value, Math.abs(value) < 0.1 ? 2 : digits)} ${of.units.mass}`;
  };
  return {
    mass,
    percent: (share) => {
      const shown = of.figure(share * 100, share < 1e-4 ? 2 : 3);
      return shown === '100' && share < 1 - 1e-9 ? of.t('app.justUnderAll') : `${shown} %`;
    },
    amount: ({ quantity, unit, kg }) => {
      const entered = `${of.plain(quantity)} ${unitSign(unit)}`;
      return unit === of.units.mass ? entered : of.t('app.amountToo', { entered, mass: mass(kg) });
    },
    reading: readingOf(of),
    limits: limitsOf(of),
  };
};

const range = (low: string, high: string | null): string => (high === null ? low : `${low}–${high}`);

const readingOf =
  (of: Of) =>
  (value: string, below: string | null, unit: string): string => {
    const entered = `${range(of.plain(value), below === null ? null : of.plain(below))} ${unitSign(unit)}`;
    const wished = wishedUnit(unit, of.units);
    const other = wished ?? (unit === 'mil' ? 'um' : null);
    if (other === null || !isUnit(unit)) return entered;
    const into = (decimal: string): string => of.figure(converted(Number(decimal), unit, other));
    const shown = `${range(into(value), below === null ? null : into(below))} ${unitSign(other)}`;
    return wished === null ? `${entered} (${shown})` : `${shown} (${entered})`;
  };

const limitsOf =
  (of: Of) =>
  ({ min, max, unit }: Limits): string => {
    const words = (write: (value: number) => string, sign: string): string => {
      if (min !== undefined && max !== undefined)
        return of.t('app.limitBetween', { min: write(min), max: write(max), unit: sign });
      if (min === undefined) return of.t('app.limitMost', { max: max === undefined ? '–' : write(max), unit: sign });
      return of.t('app.limitLeast', { min: write(min), unit: sign });
    };
    const entered = words((value) => of.plain(String(value)), unitSign(unit));
    const wished = wishedUnit(unit, of.units);
    if (wished === null || !isUnit(unit)) return of.t('app.limit', { limit: entered });
    const shown = words((value) => of.figure(converted(value, unit, wished)), unitSign(wished));
    return of.t('app.limitToo', { limit: shown, entered });
  };
