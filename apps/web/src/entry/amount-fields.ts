import type { Basis, UnitCode } from '@hull-record/trade';
import { unitSign } from '../words/figures.js';
import type { Words } from '../words/words.js';
import { decimal, type EntryField, type Said } from './entry-field.js';

/** Units that material is weighed, metered, measured out or counted in. */
export const AMOUNT_UNITS = ['kg', 'lb', 'g', 'oz', 't', 'L', 'mL', 'usgal', 'm2', 'ft2', 'yd2', 'm', 'pc'] as const;
const BASES = ['weighed', 'metered', 'apportioned', 'as scheduled'] as const;

/** What an amount begins with, under a name: kilograms that were weighed. */
export const amountAtFirst = (name: string, unit = 'kg'): Readonly<Record<string, string>> => ({
  [`${name}Unit`]: unit,
  [`${name}Basis`]: 'weighed',
});

interface AmountFieldsOf {
  readonly name: string;
  readonly label: string;
  /** Where the amount stands in what is sent (RFC 6901). */
  readonly pointer: string;
  readonly hint?: string;
}

/** The fields of an amount: how much, in which unit, and how that is known. */
export const amountFields = ({ t, term }: Words, { name, label, pointer, hint }: AmountFieldsOf): EntryField[] => [
  { name, label, kind: 'decimal', pointer: `${pointer}/quantity`, hint },
  {
    name: `${name}Unit`,
    label: t('entry.unit'),
    kind: 'choice',
    options: AMOUNT_UNITS.map((unit) => [unit, unitSign(unit)]),
    pointer: `${pointer}/unit`,
  },
  {
    name: `${name}Basis`,
    label: t('entry.basis'),
    kind: 'choice',
    options: BASES.map((basis) => [basis, term(basis)]),
    pointer: `${pointer}/basis`,
  },
];

/** The amount that was typed under a name; the service says what is wrong with it. */
export const amountOf = (said: Said, name: string) => ({
  quantity: decimal(said(name)),
  unit: said(`${name}Unit`) as UnitCode,
  basis: said(`${name}Basis`) as Basis,
});
