import type { Amount } from '@hull-record/contracts';
import type { UnitCode } from '@hull-record/trade';

/** How finely each unit is weighed, dipped or counted in this shop: digits after the point. */
const DIGITS: Partial<Record<UnitCode, number>> = { kg: 1, m2: 1, mL: 0, L: 0, pc: 0 };

/** An amount as somebody would write it. */
export const amount = (quantity: number, unit: UnitCode, basis: Amount['basis'] = 'weighed'): Amount => ({
  quantity: quantity.toFixed(quantity < 2 && unit === 'kg' ? 2 : (DIGITS[unit] ?? 1)),
  unit,
  basis,
});
