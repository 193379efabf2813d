import type { Language } from '../language/language.js';

const UNIT_SIGNS: Readonly<Record<string, string>> = {
  ...{ um: 'µm', C: '°C', F: '°F', m2: 'm²', ft2: 'ft²', yd2: 'yd²', m3: 'm³', usgal: 'US gal', pc: 'pc' },
  ...{ 'g/m2': 'g/m²', 'kg/m2': 'kg/m²', 'oz/ft2': 'oz/ft²', 'oz/yd2': 'oz/yd²', '1': '' },
};

/** The sign of a unit as people write it. */
export const unitSign = (unit: string): string => UNIT_SIGNS[unit] ?? unit;

/** A narrow space that no line breaks at: groups of digits are told apart by it in every language (ISO 80000-1). */
const BETWEEN_GROUPS = '\u202f';

/** Writes numbers as one language does. */
export interface Figures {
  /** A number of at most so many significant digits, never rounded to fewer digits than stand before the point. */
  readonly figure: (value: number, digits?: number) => string;
  /** A decimal as the record keeps it, without the zeros that say nothing. */
  readonly plain: (decimal: string) => string;
}

/** The figures of a language: in Spanish the decimal mark is a comma. */
export const figuresOf = (language: Language): Figures => {
  const mark = language === 'es' ? ',' : '.';
  return {
    figure: (value, digits = 3) => {
      const before = Math.floor(Math.log10(Math.max(1, Math.abs(value)))) + 1;
      const maximumSignificantDigits = Math.max(digits, before);
      const english = value.toLocaleString('en', { maximumSignificantDigits });
      return english.replaceAll(',', BETWEEN_GROUPS).replace('.', mark);
    },
    plain: (decimal) => (decimal.includes('.') ? decimal.replace(/\.?0+$/, '').replace('.', mark) : decimal),
  };
};
