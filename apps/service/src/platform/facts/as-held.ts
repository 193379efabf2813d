/**
 * A value as the database will hold it, so that the digest of a row can be made anew from the row.
 *
 * PostgreSQL keeps decimals without leading zeros, exponent or the sign of zero, but with the zeros behind the point;
 * and ids in small letters. What was typed stays in the journal entry as it was typed.
 *
 * @param type type of the column
 */
export const asHeld = (type: unknown, value: unknown): unknown => {
  if (typeof value !== 'string') return value;
  if (type === 'uuid') return value.toLowerCase();
  return type === 'numeric' ? heldDecimal(value) : value;
};

const DECIMAL = /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/;

const heldDecimal = (text: string): string => {
  const [, sign = '', whole = '0', fraction = '', exponent = '0'] = DECIMAL.exec(text) ?? [];
  const scale = Math.max(0, fraction.length - Number(exponent));
  const digits = (whole + fraction).padEnd(whole.length + Number(exponent), '0').padStart(scale + 1, '0');
  const before = digits.slice(0, digits.length - scale).replace(/^0+(?=\d)/, '');
  const held = scale === 0 ? before : `${before}.${digits.slice(-scale)}`;
  return /[1-9]/.test(held) ? sign + held : held;
};
